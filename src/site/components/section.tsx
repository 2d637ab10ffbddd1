import type { ComponentChildren } from "preact";
import type { MessageKey } from "../words.ts";
import { Say } from "./say.tsx";

/** A part of a page: its heading in the margin, its matter beside it. */
export function Section(props: {
  readonly id: string;
  readonly head: MessageKey;
  readonly children: ComponentChildren;
}) {
  const { id, head, children } = props;
  return (
    <section class="part" aria-labelledby={id}>
      <h2 id={id}>
        <Say k={head} />
      </h2>
      <div class="matter">{children}</div>
    </section>
  );
}

/** A table that may be wider than a phone scrolls inside its own region, which a keyboard can reach. */
export function Scroll({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls has to be reachable with the keyboard
    <section class="scroll" aria-label={name} tabIndex={0}>
      {children}
    </section>
  );
}
