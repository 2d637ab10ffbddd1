import { type Column, SWING_COLUMNS } from "../schema/columns.ts";
import { BUILT_IN_METRICS, type Metric } from "../schema/metric.ts";
import { unitsFor } from "../schema/units.ts";

/** The columns that a swing file of this season may have: the canonical table, then the trainer's own metrics. */
export interface SwingFields {
  readonly columns: readonly Column[];
  /** By field name without unit. */
  readonly byField: ReadonlyMap<string, Column>;
  /** By every header name that is understood, other units included: `bat_speed_kmh` -> bat speed in `kmh`. */
  readonly byHeader: ReadonlyMap<string, { readonly column: Column; readonly unit: string | null }>;
  /** Fields of which a file must hold at least one. */
  readonly measured: ReadonlySet<string>;
}

/** Columns and header names for a season with these metrics. */
export function swingFields(metrics: readonly Metric[]): SwingFields {
  const builtIn = new Set(BUILT_IN_METRICS.map((metric) => metric.id));
  const own = metrics
    .filter((metric) => !builtIn.has(metric.id))
    .map(
      ({ id, unit, plausible }): Column => ({
        field: id,
        header: `${id}_${unit}`,
        is: { kind: "number", unit, plausible },
      }),
    );
  const columns = [...SWING_COLUMNS, ...own];
  const byHeader = new Map<string, { column: Column; unit: string | null }>();
  for (const column of columns) {
    const units = column.is.kind === "number" ? unitsFor(column.is.unit) : [];
    for (const unit of units) byHeader.set(`${column.field}_${unit}`, { column, unit });
    if (units.length === 0) byHeader.set(column.header, { column, unit: null });
  }
  return {
    columns,
    byField: new Map(columns.map((column) => [column.field, column])),
    byHeader,
    measured: new Set(metrics.map((metric) => metric.id)),
  };
}
