import { Presets, SingleBar } from "cli-progress";

/** Away from a terminal a long stage says so in quarters. */
const QUARTERS = 4;
/** A stage that is over sooner needs no line. */
const LONG_MS = 2000;

export interface Shown {
  progress(stage: string, done: number, of: number): void;
  /** Takes the bar away: nothing more is coming. */
  finished(): void;
}

/**
 * Sparse lines, for logs: one a quarter, and none for a stage that is soon over.
 *
 * @param elapsedMs milliseconds of a clock that only moves forward
 */
export function progressLines(write: (text: string) => void, elapsedMs: () => number): Shown {
  const said = new Map<string, number>();
  const since = new Map<string, number>();
  return {
    progress(stage, done, of) {
      const began = since.get(stage) ?? elapsedMs();
      since.set(stage, began);
      if (elapsedMs() - began < LONG_MS) return;
      const quarter = Math.floor((done * QUARTERS) / of);
      if (quarter <= (said.get(stage) ?? 0)) return;
      said.set(stage, quarter);
      write(`${stage}: ${done} of ${of}\n`);
    },
    finished() {},
  };
}

/** A bar on a terminal, sparse lines elsewhere. */
export function progressTo(stream: NodeJS.WriteStream, elapsedMs: () => number): Shown {
  if (!stream.isTTY) return progressLines((text) => stream.write(text), elapsedMs);
  let bar: SingleBar | null = null;
  let current = "";
  const finished = () => {
    bar?.stop();
    bar = null;
  };
  return {
    progress(stage, done, of) {
      if (!bar || stage !== current) {
        finished();
        current = stage;
        const format = `${stage.padEnd(10)} {bar} {value} of {total}`;
        bar = new SingleBar({ format, stream, clearOnComplete: true, hideCursor: true }, Presets.shades_classic);
        bar.start(of, done);
      }
      bar.update(done);
    },
    finished,
  };
}
