/**
 * What a JSON pointer leads to.
 *
 * @param root    any JSON value
 * @param pointer as in RFC 6901: `/series/3/change/estimate`; the empty pointer is the root itself
 * @throws {Error} when the pointer leads to nothing, so that a page can never show a figure that the report does not hold
 */
export function readPointer(root: unknown, pointer: string): unknown {
  if (pointer === "") return root;
  if (!pointer.startsWith("/")) throw new Error(`a JSON pointer starts with a slash, got "${pointer}"`);
  let here: unknown = root;
  for (const part of pointer.slice(1).split("/")) {
    const key = part.replaceAll("~1", "/").replaceAll("~0", "~");
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, key)) {
      throw new Error(`the pointer "${pointer}" leads to nothing (at "${part}")`);
    }
    here = (here as Record<string, unknown>)[key];
  }
  return here;
}

/** @throws {Error} when the pointer does not lead to a finite number */
export function readNumber(root: unknown, pointer: string): number {
  const value = readPointer(root, pointer);
  if (typeof value !== "number" || !Number.isFinite(value)) {
    throw new Error(`the pointer "${pointer}" leads to ${String(value)}, not to a finite number`);
  }
  return value;
}

/** @throws {Error} when the pointer does not lead to text */
export function readText(root: unknown, pointer: string): string {
  const value = readPointer(root, pointer);
  if (typeof value !== "string") throw new Error(`the pointer "${pointer}" leads to ${String(value)}, not to text`);
  return value;
}
