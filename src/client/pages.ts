/** A page as text. @throws when the host does not have it */
export async function fetched(address: string): Promise<string> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(answer.statusText);
  return answer.text();
}

export const parsed = (html: string): Document => new DOMParser().parseFromString(html, "text/html");
