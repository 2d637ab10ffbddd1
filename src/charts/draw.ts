import * as vega from "vega";
import { compile, type TopLevelSpec } from "vega-lite";
import { ChartError, type ChartSpec } from "./chart.ts";
import { drawingLocale } from "./locale.ts";
import { stripSvg } from "./strip.ts";
import { measureWithPageFont } from "./vega-text.ts";

/** A kind's parsed form with the spec that it came from: a kind that brings a second spec is a fault of ours. */
const kinds = new Map<string, { spec: TopLevelSpec; runtime: vega.Runtime }>();

/**
 * Draws one chart as an `<svg>` element for use inside a page: no script, no style attribute, no fixed size, colours as custom
 * properties, ids starting with the chart's id, numbers to a tenth of a px. The same chart gives the same bytes whatever was drawn
 * before it and in whatever time zone.
 *
 * @throws {ChartError} a number that is not finite, a data set or signal that the spec lacks, or a fault while drawing
 */
export async function drawSvg(chart: ChartSpec): Promise<string> {
  refuseOddInput(chart);
  measureWithPageFont();
  const runtime = parsed(chart);
  // A View that was fed before draws differently depending on its past: each chart has its own.
  const view = new vega.View(runtime, {
    renderer: "none",
    logLevel: vega.Warn,
    logger: throwingLogger(chart.id),
    locale: drawingLocale(chart.locale),
  } as unknown as vega.ViewOptions);
  try {
    view.width(chart.width).height(chart.height);
    for (const [name, value] of Object.entries(chart.signals)) view.signal(name, value);
    for (const [name, rows] of Object.entries(chart.data))
      view.data(
        name,
        rows.map((row) => ({ ...row })),
      );
    vega.resetSVGDefIds();
    return stripSvg(chart.id, await view.toSVG());
  } catch (error) {
    if (error instanceof ChartError) throw error;
    throw new ChartError(chart.id, error instanceof Error ? error.message : String(error));
  } finally {
    view.finalize();
  }
}

/** The Vega spec that a chart's kind compiles to. */
export function compiled(chart: Pick<ChartSpec, "id" | "spec">): vega.Spec {
  return compile(chart.spec, { logger: throwingLogger(chart.id) } as Parameters<typeof compile>[1]).spec;
}

function parsed(chart: ChartSpec): vega.Runtime {
  const known = kinds.get(chart.kind);
  if (known) {
    if (known.spec !== chart.spec) throw new ChartError(chart.id, `kind "${chart.kind}" has two specs`);
    return known.runtime;
  }
  const runtime = vega.parse(compiled(chart));
  kinds.set(chart.kind, { spec: chart.spec, runtime });
  return runtime;
}

function refuseOddInput(chart: ChartSpec): void {
  if (!/^[A-Za-z][A-Za-z0-9-]*$/.test(chart.id)) throw new ChartError(chart.id, "an id is letters, digits and hyphens");
  for (const [name, rows] of Object.entries(chart.data)) {
    rows.forEach((row, i) => {
      for (const [key, value] of Object.entries(row)) refuseOddNumber(chart.id, `${name}[${i}].${key}`, value);
    });
  }
  for (const [name, value] of Object.entries(chart.signals)) {
    for (const one of Array.isArray(value) ? value : [value]) refuseOddNumber(chart.id, name, one);
  }
}

function refuseOddNumber(id: string, where: string, value: unknown): void {
  if (typeof value === "number" && !Number.isFinite(value)) throw new ChartError(id, `${where} is ${value}`);
}

/** Warnings of Vega are faults of a spec: they stop the chart rather than pass unseen. */
function throwingLogger(id: string): vega.LoggerInterface {
  const refuse = (...args: readonly unknown[]): never => {
    throw new ChartError(id, args.map(String).join(" "));
  };
  const logger = {
    level: (level?: number) => (level === undefined ? vega.Warn : logger),
    error: refuse,
    warn: refuse,
    info: () => logger,
    debug: () => logger,
  };
  return logger as unknown as vega.LoggerInterface;
}
