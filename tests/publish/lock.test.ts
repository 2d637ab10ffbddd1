import { describe, expect, test } from "vitest";
import { takeLock } from "../../src/publish/lock.ts";
import { MemoryDisk } from "./memory-disk.ts";

const runner = (pid: number, ...alive: number[]) => ({ pid, isAlive: (other: number) => alive.includes(other) });

describe("two builds of one season", () => {
  test("do not run at once: the second hears who is first", async () => {
    const disk = new MemoryDisk();
    const release = await takeLock("/s", runner(11), { disk });
    await expect(takeLock("/s", runner(12, 11), { disk })).rejects.toThrow("process 11");
    expect(disk.text("/s/lock")).toBe("pid 11\n");
    await release();
    await (await takeLock("/s", runner(12, 11), { disk }))();
    expect(disk.files.size).toBe(0);
  });

  test("a build that was killed does not keep the season shut", async () => {
    const disk = new MemoryDisk({ "/s/lock": "pid 11\n" });
    await takeLock("/s", runner(12), { disk });
    expect(disk.text("/s/lock")).toBe("pid 12\n");
    expect(disk.files.size).toBe(1);
  });

  test("nor does a lock that was torn while it was written", async () => {
    const disk = new MemoryDisk({ "/s/lock": "pi" });
    await takeLock("/s", runner(12), { disk });
    expect(disk.text("/s/lock")).toBe("pid 12\n");
  });

  test("of two that find the same dead lock one alone goes on", async () => {
    const disk = new MemoryDisk({ "/s/lock": "pid 11\n" });
    const results = await Promise.allSettled([
      takeLock("/s", runner(12, 13), { disk }),
      takeLock("/s", runner(13, 12), { disk }),
    ]);
    expect(results.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
  });
});
