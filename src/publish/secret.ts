import { join } from "node:path";
import type { Effects } from "../schema/effects.ts";
import { EXIT, Stopped } from "./stopped.ts";

const BYTES = 32;
const WRITTEN = new RegExp(`^[0-9a-f]{${BYTES * 2}}\n?$`);

/**
 * The season's secret: 32 random bytes from which every link derives. Made once, then only ever read: a new one would
 * make every link that was handed out dead.
 *
 * @param stateFolder absolute path of `.winterbook/`; made with mode 700 when it is not there
 * @throws {Stopped} the file is there but is not a secret
 */
export async function secretOf(
  stateFolder: string,
  effects: Pick<Effects, "disk" | "randomBytes">,
): Promise<Uint8Array> {
  const path = join(stateFolder, "secret");
  await effects.disk.makeFolder(stateFolder, 0o700);
  if (!(await effects.disk.exists(path))) {
    const fresh = Buffer.from(effects.randomBytes(BYTES));
    if (fresh.length !== BYTES) throw new Error(`the source of randomness gave ${fresh.length} bytes, not ${BYTES}`);
    // Another build may have been quicker: then its secret is the one that counts, and it is read below.
    await effects.disk.create(path, `${fresh.toString("hex")}\n`, 0o600);
  }
  const text = Buffer.from(await effects.disk.read(path)).toString("latin1");
  if (!WRITTEN.test(text)) {
    throw new Stopped(
      EXIT.input,
      `${path} is damaged: it should hold ${BYTES * 2} hexadecimal digits`,
      "put it back from a backup; without one, move the file away and build again, and every link changes",
    );
  }
  return new Uint8Array(Buffer.from(text.trim(), "hex"));
}
