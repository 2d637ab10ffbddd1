import { join } from "node:path";
import type { Effects } from "../schema/effects.ts";
import { LINKS_FILE, linkStateText, NOTHING } from "./link-state.ts";
import { EXIT, Stopped } from "./stopped.ts";

const BYTES = 32;
const WRITTEN = new RegExp(`^[0-9a-f]{${BYTES * 2}}\n?$`);

/**
 * The season's secret: 32 random bytes from which every link derives. Made once, then only ever read: a new one would
 * make every link that was handed out dead.
 *
 * @param stateFolder absolute path of `.winterbook/`; made with mode 700 when it is not there
 * @throws {Stopped} the file is there but is not a secret, or it is gone while links were made from it
 */
export async function secretOf(
  stateFolder: string,
  effects: Pick<Effects, "disk" | "randomBytes">,
): Promise<Uint8Array<ArrayBuffer>> {
  const path = join(stateFolder, "secret");
  await effects.disk.makeFolder(stateFolder, 0o700);
  // Looked for first: a build at the same moment makes it after its secret.
  const hadLinks = await effects.disk.exists(join(stateFolder, LINKS_FILE));
  if (!(await effects.disk.exists(path))) {
    if (hadLinks) {
      throw new Stopped(
        EXIT.input,
        `${path} is gone, and links were made from it`,
        `put it back from a backup; without one, move ${LINKS_FILE} beside it away and build again: every link changes and has to be handed out anew`,
      );
    }
    const fresh = Buffer.from(effects.randomBytes(BYTES));
    if (fresh.length !== BYTES) throw new Error(`the source of randomness gave ${fresh.length} bytes, not ${BYTES}`);
    // Another build may have been quicker: then its secret is the one that counts, and it is read below.
    await effects.disk.create(path, `${fresh.toString("hex")}\n`, 0o600);
    await effects.disk.create(join(stateFolder, LINKS_FILE), linkStateText(NOTHING), 0o600);
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
