import { expect, test } from "vitest";
import { near } from "../../src/intake/near.ts";

test.each([
  ["recipiants", ["recipients", "goals"], "recipients"],
  ["nmae", ["name", "born"], "name"],
  ["Bat_Speed", ["bat-speed"], "bat-speed"],
  ["tee", ["machine", "live"], null],
  ["sex", ["set", "by"], "set"],
  ["x", ["y"], null],
  ["", ["a"], null],
])("%s is meant to be one of %j: %s", (word, allowed, meant) => expect(near(word, allowed)).toBe(meant));
