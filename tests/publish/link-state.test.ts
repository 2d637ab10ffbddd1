import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changedLinks, keepLinkState, type LinkChange } from "../../src/publish/change-links.ts";
import { historyOf, linkStateOf } from "../../src/publish/link-state.ts";
import { linksOf } from "../../src/publish/links.ts";
import type { LinkState } from "../../src/schema/link-state.ts";
import type { Reader } from "../../src/schema/reasons.ts";
import { MemoryDisk } from "./memory-disk.ts";

const secret = new Uint8Array(32).fill(7);
const nothing: LinkState = { changes: [], handed: [], forgotten: [], passphrases: [] };
const to = (recipient: string, reader: Reader, agreedOn: string) => ({
  ...{ recipient, reader, agreedOn, label: null, until: null, sealed: false, withheld: null },
});
const subject = (id: string) => ({
  id,
  audiences: [
    to("home", "family", "2025-10-01"),
    to("other-home", "family", "2025-10-01"),
    to("club-1", "club", "2025-10-02"),
  ],
});
const season = [subject("ada-lund"), subject("ben-ridge")];
const links = (state: LinkState) => linksOf(secret, state, season, "2026-02-28");
const changedBy = (...changes: LinkChange[]) =>
  changes.reduce((state, change) => changedLinks(state, links(state), change), nothing);
const tokens = (state: LinkState) => new Map(links(state).map((one) => [`${one.athlete}/${one.recipient}`, one.token]));

describe("what is done with links", () => {
  test("a rotated link has another address, and everybody else's stays", () => {
    const state = changedBy({ kind: "rotated", athlete: "ada-lund", recipient: "home", on: "2026-01-10" });
    const [before, now] = [tokens(nothing), tokens(state)];
    const moved = [...before].flatMap(([key, token]) => (now.get(key) === token ? [] : [key]));
    expect(moved).toEqual(["ada-lund/home"]);
    expect(links(state).find(({ recipient }) => recipient === "home")).toMatchObject({ since: "2026-01-10" });
    expect(links(state).find(({ recipient }) => recipient === "club-1")).toMatchObject({ since: "2025-10-02" });
  });

  test("without a recipient all links of the athlete are meant", () => {
    const state = changedBy({ kind: "rotated", athlete: "ben-ridge", recipient: null, on: "2026-01-10" });
    const [before, now] = [tokens(nothing), tokens(state)];
    expect([...before].filter(([key, token]) => now.get(key) === token).map(([key]) => key)).toEqual([
      "ada-lund/home",
      "ada-lund/other-home",
      "ada-lund/club-1",
    ]);
  });

  test("a revoked link is dead until it is rotated, and then opens under a new address", () => {
    const change = { athlete: "ada-lund", recipient: "club-1" } as const;
    const revoked = changedBy({ ...change, kind: "revoked", on: "2026-01-10" });
    expect(
      links(revoked)
        .filter(({ withheld }) => withheld === "link-revoked")
        .map(({ recipient }) => recipient),
    ).toEqual(["club-1"]);
    const again = changedLinks(revoked, links(revoked), { ...change, kind: "rotated", on: "2026-01-11" });
    expect(links(again).every(({ withheld }) => withheld === null)).toBe(true);
    expect(tokens(again).get("ada-lund/club-1")).not.toBe(tokens(nothing).get("ada-lund/club-1"));
  });

  test("no address ever comes back, whatever is done in whatever order", () => {
    const change = fc.record({
      kind: fc.constantFrom("rotated" as const, "revoked" as const),
      athlete: fc.constantFrom("ada-lund", "ben-ridge"),
      recipient: fc.constantFrom("home", "other-home", "club-1", null),
      on: fc.constant("2026-01-10"),
    });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 8 }), (changes) => {
        const dead = new Set<string>();
        let state = nothing;
        for (const one of changes) {
          const [before, next] = [links(state), changedLinks(state, links(state), one)];
          const now = new Set(
            links(next)
              .filter(({ withheld }) => withheld === null)
              .map(({ token }) => token),
          );
          for (const { token, withheld } of before) if (withheld === null && !now.has(token)) dead.add(token);
          state = next;
          // A revoked link's own address may only come back by nothing at all: rotating gives a new one.
          expect([...now].filter((token) => dead.has(token))).toEqual([]);
        }
      }),
    );
  });

  test("a hand-out is noted for the address that was handed out", () => {
    const handed = {
      kind: "handed",
      athlete: "ada-lund",
      recipient: "home",
      to: "mother, by mail",
      on: "2026-01-05",
    } as const;
    const state = changedBy(handed);
    expect(historyOf(state, handed).handed).toEqual([
      { athlete: "ada-lund", recipient: "home", to: "mother, by mail", on: "2026-01-05", rotation: 0 },
    ]);
    const rotated = changedLinks(state, links(state), { ...handed, kind: "rotated", on: "2026-01-09" });
    expect(historyOf(rotated, handed).handed).toEqual([]);
  });

  test("who or what is not there is named with what is", () => {
    expect(() => changedBy({ kind: "revoked", athlete: "cy", recipient: null, on: "2026-01-05" })).toThrow(
      'no link of "cy"',
    );
    expect(() => changedBy({ kind: "revoked", athlete: "ada-lund", recipient: "gran", on: "2026-01-05" })).toThrow(
      'ada-lund has no link for "gran"',
    );
  });
});

describe("the file beside the secret", () => {
  test("is read back as it was written, for its owner's eyes alone", async () => {
    const disk = new MemoryDisk();
    expect(await linkStateOf("/s/.winterbook", { disk })).toEqual(nothing);
    const state = changedBy({ kind: "rotated", athlete: "ada-lund", recipient: null, on: "2026-01-10" });
    await keepLinkState("/s/.winterbook", state, { disk });
    expect(await linkStateOf("/s/.winterbook", { disk })).toEqual(state);
    expect([...disk.files.keys()]).toEqual(["/s/.winterbook/links.json"]);
  });

  test("is old or new after a power cut, never half", async () => {
    const state = changedBy({ kind: "revoked", athlete: "ada-lund", recipient: null, on: "2026-01-10" });
    for (let stop = 0; stop < 3; stop += 1) {
      const disk = new MemoryDisk();
      await keepLinkState("/s/.winterbook", nothing, { disk });
      disk.stopAfter = disk.operations + stop;
      await keepLinkState("/s/.winterbook", state, { disk }).catch(() => undefined);
      disk.stopAfter = Number.POSITIVE_INFINITY;
      expect([nothing, state]).toContainEqual(await linkStateOf("/s/.winterbook", { disk }));
    }
  });

  test.each(["", "[]", '{"changes":[{"athlete":"a","recipient":"b","kind":"gone","on":"2026-01-01"}],"handed":[]}'])(
    "%j is said to be damaged",
    async (text) => {
      const disk = new MemoryDisk({ "/s/.winterbook/links.json": text });
      await expect(linkStateOf("/s/.winterbook", { disk })).rejects.toThrow("is damaged");
    },
  );
});
