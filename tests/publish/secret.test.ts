import { describe, expect, test } from "vitest";
import { secretOf } from "../../src/publish/secret.ts";
import { MemoryDisk } from "./memory-disk.ts";

const counting = (count: number) => Uint8Array.from({ length: count }, (_, i) => i);

describe("the season's secret", () => {
  test("is made once, for its owner's eyes alone, and stays", async () => {
    const disk = new MemoryDisk();
    const first = await secretOf("/s/.winterbook", { disk, randomBytes: counting });
    const second = await secretOf("/s/.winterbook", { disk, randomBytes: () => new Uint8Array(32).fill(9) });
    expect([...first]).toEqual([...counting(32)]);
    expect([...second]).toEqual([...first]);
    expect(disk.modes.get("/s/.winterbook")).toBe(0o700);
    expect(disk.modes.get("/s/.winterbook/secret")).toBe(0o600);
  });

  test("that another build made at the same moment is the one that counts", async () => {
    const disk = new MemoryDisk();
    disk.exists = async () => {
      await disk.create("/s/.winterbook/secret", `${"ab".repeat(32)}\n`);
      return false;
    };
    const secret = await secretOf("/s/.winterbook", { disk, randomBytes: counting });
    expect([...secret]).toEqual(new Array(32).fill(0xab));
  });

  test.each(["", "ab", "z".repeat(64), `${"ab".repeat(32)} x`])(
    "%j is said to be damaged, and left alone",
    async (text) => {
      const disk = new MemoryDisk({ "/s/.winterbook/secret": text });
      await expect(secretOf("/s/.winterbook", { disk, randomBytes: counting })).rejects.toThrow("is damaged");
      expect(disk.text("/s/.winterbook/secret")).toBe(text);
    },
  );

  test("that is gone is not made anew where links were made from one: all of them would change unseen", async () => {
    const disk = new MemoryDisk();
    await secretOf("/s/.winterbook", { disk, randomBytes: counting });
    expect(disk.modes.get("/s/.winterbook/links.json")).toBe(0o600);
    disk.files.delete("/s/.winterbook/secret");
    await expect(secretOf("/s/.winterbook", { disk, randomBytes: counting })).rejects.toThrow("is gone");
    disk.files.delete("/s/.winterbook/links.json");
    expect(await secretOf("/s/.winterbook", { disk, randomBytes: counting })).toHaveLength(32);
  });

  test("is never made from too little randomness", async () => {
    const disk = new MemoryDisk();
    await expect(secretOf("/s/.winterbook", { disk, randomBytes: () => new Uint8Array(4) })).rejects.toThrow("4 bytes");
    expect(disk.files.size).toBe(0);
  });
});
