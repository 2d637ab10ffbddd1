import type { ComponentChildren } from "preact";
import { useAthlete } from "../reading.ts";

export interface ChartFigureProps {
  readonly id: string;
  /** The sentence that stands for the picture. */
  readonly alt: string;
  /** Its dots are the days of the table of its measure. */
  readonly days?: boolean;
  readonly children?: ComponentChildren;
}

/** A chart with its sentence; nothing when no chart of that id was drawn. */
export function ChartFigure({ id, alt, days = false, children }: ChartFigureProps) {
  const svg = useAthlete().charts.get(id);
  if (svg === undefined) return null;
  return (
    <div class="chart">
      {/* Safe to hand over as it is: drawn by our own charts, with every text escaped there. The picture alone is the image: a caption inside role=img would be lost to a screen reader. */}

      <figure role="img" aria-label={alt} data-days={days || undefined} dangerouslySetInnerHTML={{ __html: svg }} />
      {children === undefined ? null : <p class="caption">{children}</p>}
    </div>
  );
}
