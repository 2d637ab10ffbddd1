import { describe, expect, test } from "vitest";
import { afterSecondLook, type Look, secondLook } from "../../../src/report/change/second-look.ts";
import type { Interval } from "../../../src/stats/interval.ts";

const line = (slope: number, interval: Interval) => ({ slope, interval });
const other = (slope: number, interval: Interval | null): Look => ({ slope, interval });

describe("the second look", () => {
  test("bears the line out when both intervals exclude nothing on the same side, or both hold it", () => {
    expect(secondLook(line(2, [1, 3]), other(1.5, [0.5, 2.5]))).toBe("agrees");
    expect(secondLook(line(1, [-1, 3]), other(0.5, [-2, 2.5]))).toBe("agrees");
    expect(secondLook(line(0, [-1, 1]), other(0, [0, 0]))).toBe("agrees");
  });

  test("differs when one interval alone excludes nothing, or the slopes have opposite signs", () => {
    expect(secondLook(line(2, [1, 3]), other(1.5, [-0.5, 2.5]))).toBe("differs");
    expect(secondLook(line(2, [-1, 3]), other(1.5, [0.5, 2.5]))).toBe("differs");
    expect(secondLook(line(2, [-1, 5]), other(-0.1, [-2, 2]))).toBe("differs");
  });

  test("is none without an interval of its own", () => {
    expect(secondLook(line(2, [1, 3]), null)).toBe("none");
    expect(secondLook(line(2, [1, 3]), other(-1.5, null))).toBe("none");
  });
});

describe("the verdict after it", () => {
  test("stays when it is borne out", () => {
    expect(afterSecondLook("clear-decline", "agrees", other(-1, [-2, -1]))).toBe("clear-decline");
    expect(afterSecondLook("same", "agrees", other(0, [-1, 1]))).toBe("same");
  });

  test("cannot be told when a change is not", () => {
    for (const verdict of ["clear-improvement", "improvement", "small-improvement", "decline"] as const) {
      expect(afterSecondLook(verdict, "differs", other(1, [-1, 2]))).toBe("cannot-tell");
    }
  });

  test("stays the same over slopes of opposite signs near nothing, and not against an interval that excludes it", () => {
    expect(afterSecondLook("same", "differs", other(-0.1, [-1, 1]))).toBe("same");
    expect(afterSecondLook("same", "differs", other(0.4, [0.1, 0.8]))).toBe("cannot-tell");
  });

  test("is no longer clear where there was none", () => {
    expect(afterSecondLook("clear-improvement", "none", null)).toBe("improvement");
    expect(afterSecondLook("clear-decline", "none", null)).toBe("decline");
    expect(afterSecondLook("small-decline", "none", null)).toBe("small-decline");
    expect(afterSecondLook("same", "none", null)).toBe("same");
  });
});
