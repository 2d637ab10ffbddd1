import { useAthlete, useReading } from "../reading.ts";
import { type PagePart, type Variant, wayTo } from "../variants.ts";
import { wordsFor } from "../words.ts";

/** The same page in another language or in other units, without a script. */
export function Choices() {
  const { words } = useReading();
  const { variant, variants } = useAthlete();
  const same = variants.filter(({ part }) => part === variant.part);
  const languages = same.filter(({ units }) => units === variant.units);
  const units = same.filter(({ language }) => language === variant.language);
  return (
    <nav class="choices" aria-label={words.text("choices.name")}>
      {languages.length < 2 ? null : (
        <ul>
          {languages.map((one) => (
            <li key={one.language}>
              <Choice of={one} text={wordsFor(one.language).text("language.own")} />
            </li>
          ))}
        </ul>
      )}
      <ul>
        {units.map((one) => (
          <li key={one.units}>
            <Choice of={one} text={words.text(`choices.${one.units}`)} />
          </li>
        ))}
      </ul>
    </nav>
  );
}

function Choice({ of, text }: { readonly of: Variant; readonly text: string }) {
  const { words } = useReading();
  const { variant } = useAthlete();
  const lang = of.language === words.language ? undefined : of.language;
  if (of.folder === variant.folder)
    return (
      <span aria-current="page" lang={lang}>
        {text}
      </span>
    );
  return (
    <a href={wayTo(variant, of)} lang={lang} hreflang={of.language}>
      {text}
    </a>
  );
}

const PARTS = {
  "numbers.to": ["numbers"],
  "numbers.back": ["report"],
  "card.to": ["card"],
  "interim.card": ["card"],
  "card.back": ["report", "interim"],
} as const satisfies Record<string, readonly PagePart[]>;

/** The way from one page of a link to another in the same language and units; nothing where the link has no such page. */
export function OtherPart({ k }: { readonly k: keyof typeof PARTS }) {
  const wanted: readonly PagePart[] = PARTS[k];
  const { words } = useReading();
  const { variant, variants } = useAthlete();
  const other = variants.find(
    ({ part, language, units }) => wanted.includes(part) && language === variant.language && units === variant.units,
  );
  if (other === undefined) return null;
  return (
    <a href={wayTo(variant, other)} data-numbers={other.part === "numbers" || undefined}>
      {words.text(k)}
    </a>
  );
}
