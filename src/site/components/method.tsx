import { Figure } from "./figure.tsx";
import { Say } from "./say.tsx";
import { Section } from "./section.tsx";

const PARTS = [
  "unit",
  "line",
  "twice",
  "yardsticks",
  "words",
  "few",
  "tests",
  "window",
  "peers",
  "goals",
  "best",
  "cannot",
] as const;

/**
 * How a verdict is reached, in plain words, with how often it is wrong.
 *
 * @param props.at pointer to a report's `method`
 */
export function MethodText({ at }: { readonly at: string }) {
  const ofHundred = (name: string) => <Figure at={`${at}/falseAlarm/${name}`} per={100} />;
  return (
    <ul class="method">
      {PARTS.map((part) => (
        <li key={part}>
          <Say k={`method.${part}`} />
        </li>
      ))}
      <li>
        <Say
          k="method.rates"
          with={{
            independent: ofHundred("independent"),
            alike: ofHundred("alike"),
            tests: ofHundred("tests"),
            seasons: <Figure at={`${at}/seasons`} />,
          }}
        />
      </li>
    </ul>
  );
}

/** The same on an athlete's page, folded until somebody asks. */
export function Method() {
  return (
    <Section id="method" head="method.head">
      <p>
        <Say k="method.short" />
      </p>
      <details>
        <summary>
          <Say k="method.open" />
        </summary>
        <MethodText at="/method" />
      </details>
    </Section>
  );
}
