// Installs what package-lock.json asks for, when it is not there yet. Runs before every command, on nothing but Node:
// no dependency, no TypeScript, and syntax that a Node too old for us still reads, so that it can say so.
import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** A lock folder without a process number is being made or was torn; after this long it is dead. */
const TORN_AFTER_MS = 10000;
const LOOK_AGAIN_MS = 250;

/** Modification time in milliseconds; 0 for a file that is not there. */
function changed(path) {
  try {
    return statSync(path).mtimeMs;
  } catch {
    return 0;
  }
}

/** npm writes its hidden lock file last, so one that is not older than ours means a finished installation. */
function isInstalled(root) {
  const done = changed(join(root, "node_modules", ".package-lock.json"));
  return done > 0 && done >= changed(join(root, "package-lock.json"));
}

/** What is wrong with this Node for the lowest version that package.json names; null when nothing is. */
function oldNode(root) {
  const wanted = JSON.parse(readFileSync(join(root, "package.json"), "utf8")).engines.node;
  const [major, minor] = />=\s*(\d+)\.(\d+)/.exec(wanted).slice(1).map(Number);
  const [isMajor, isMinor] = process.versions.node.split(".").map(Number);
  if (isMajor > major || (isMajor === major && isMinor >= minor)) return null;
  return `Winterbook needs Node ${major}.${minor} or newer, and this is Node ${process.versions.node}. Install a newer Node and try again.`;
}

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}

/** Whether the process that made the lock folder is still at work. */
function isHeld(lock) {
  let text = "";
  try {
    text = readFileSync(join(lock, "pid"), "utf8");
  } catch {
    // Not written yet, or never.
  }
  const pid = Number(text);
  if (pid > 0) return isAlive(pid);
  const since = changed(lock);
  return since > 0 && Date.now() - since < TORN_AFTER_MS;
}

/** Makes the lock folder, which one process alone can; takes over that of a process that is gone. */
function takeLock(lock) {
  try {
    mkdirSync(lock);
    writeFileSync(join(lock, "pid"), String(process.pid));
    return true;
  } catch (error) {
    if (error.code !== "EEXIST") throw error;
  }
  if (isHeld(lock)) return false;
  // Renamed first: of two that find it dead, one alone can move it away.
  const aside = `${lock}.${process.pid}`;
  try {
    renameSync(lock, aside);
    rmSync(aside, { recursive: true, force: true });
  } catch {
    // The other one was quicker.
  }
  return false;
}

const sleep = (ms) => new Promise((done) => setTimeout(done, ms));

/** Runs npm with its output visible; resolves to its exit status. */
function npmCi(root) {
  const args = ["ci", "--include=dev", "--no-audit", "--no-fund"];
  // The npm that runs us is the one to call: on Windows `npm` is a script that cannot be started directly.
  const npm = process.env.npm_execpath;
  const direct = npm !== undefined && /npm-cli\.[cm]?js$/.test(npm);
  const command = direct ? process.execPath : "npm";
  return new Promise((done) => {
    const child = spawn(command, direct ? [npm].concat(args) : args, {
      cwd: root,
      stdio: "inherit",
      shell: !direct && process.platform === "win32",
    });
    child.on("error", (error) => {
      process.stderr.write(`npm could not be started: ${error.message}\n`);
      done(1);
    });
    child.on("close", (code) => done(code === null ? 1 : code));
  });
}

async function main() {
  const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
  const tooOld = oldNode(root);
  if (tooOld !== null) {
    process.stderr.write(`${tooOld}\n`);
    return 1;
  }
  const lock = join(root, ".install-lock");
  for (let waited = false; !isInstalled(root); ) {
    if (takeLock(lock)) {
      try {
        // Somebody may have finished between our look and our lock.
        if (isInstalled(root)) return 0;
        process.stdout.write("Installing what package-lock.json asks for (npm ci) …\n");
        const code = await npmCi(root);
        if (code !== 0) process.stderr.write("npm ci did not finish: what it said stands above.\n");
        return code;
      } finally {
        rmSync(lock, { recursive: true, force: true });
      }
    }
    if (!waited && isHeld(lock)) {
      waited = true;
      process.stdout.write("Another command is installing already: waiting for it …\n");
    }
    await sleep(LOOK_AGAIN_MS);
  }
  return 0;
}

main().then((code) => {
  process.exitCode = code;
});
