/** Letters that carry no accent to take off (the choices of common transliteration). */
const LETTERS: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
  ħ: "h",
  ı: "i",
  ŋ: "n",
};

/**
 * An id made from a name: accents off, lower case, hyphens between words.
 *
 * @returns empty when the name holds no Latin letter and no digit
 * @example idFromName("José Núñez-Østby") // => "jose-nunez-ostby"
 */
export function idFromName(name: string): string {
  return name
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^a-z0-9]/gu, (sign) => LETTERS[sign] ?? (/['\u2018\u2019\u02bc.]/.test(sign) ? "" : "-"))
    .replaceAll(/-+/g, "-")
    .replaceAll(/^-|-$/g, "");
}

/** One form for names that differ in case, accents' encoding or spaces alone: the folding by which exports find their athlete. */
export const foldedName = (name: string): string => name.trim().toUpperCase().toLowerCase().normalize("NFC");
