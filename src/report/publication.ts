import type { z } from "zod";
import type { Consent } from "../schema/profile.ts";
import type { Reader } from "../schema/reasons.ts";
import type { Publication } from "./schema.ts";

/**
 * May this reader be given the report? Adults publish on their own word, minors on a guardian's; a word that was taken back
 * or has ended does not count, nor does one that says what it covers and leaves the numbers out.
 */
export function publicationFor(
  consents: readonly Consent[],
  minor: boolean,
  reader: Reader,
  asOf: string,
): z.infer<typeof Publication> {
  const needed = minor ? "guardian" : "self";
  const forReader = consents.filter((consent) => consent.readers.includes(reader));
  const right = forReader.filter((consent) => consent.as === needed);
  const live = right.filter(
    (consent) => consent.withdrawn === undefined && (consent.until === undefined || consent.until >= asOf),
  );
  const given = live.find(({ covers }) => covers === undefined || covers.includes("numbers"));
  if (given) return { publish: true, as: given.as, agreedOn: given.on, covers: given.covers ?? null };
  if (live.length > 0) return { publish: false, why: "not-covered" };
  if (right.some((consent) => consent.withdrawn !== undefined)) return { publish: false, why: "withdrawn" };
  if (right.length > 0) return { publish: false, why: "ended" };
  if (forReader.length > 0) return { publish: false, why: minor ? "needs-guardian" : "needs-own" };
  return { publish: false, why: "no-consent" };
}
