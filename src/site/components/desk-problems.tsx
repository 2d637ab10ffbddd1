import type { DeskInput, DeskView } from "../desk-view.ts";
import { useReading } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Count, Say } from "./say.tsx";
import { Scroll } from "./section.tsx";

/** What asks something of the trainer first; the many single rows folded away below. */
export function DeskProblems({ view }: { readonly view: DeskView }) {
  const { problems, rowProblems, rowProblemCount, farValues } = view;
  return (
    <section aria-labelledby="problems">
      <h2 id="problems">
        <Say k="desk.problems" />
      </h2>
      {problems.length === 0 ? (
        <p>
          <Say k="desk.noProblems" />
        </p>
      ) : (
        <ProblemTable name="desk.problems" problems={problems} />
      )}
      {rowProblems.length === 0 ? null : (
        <details>
          <summary>
            <Count k="desk.rowProblems" at="/rowProblemCount" />
          </summary>
          {rowProblemCount > rowProblems.length ? (
            <p class="aside">
              <Say k="desk.rowProblemsMore" />
            </p>
          ) : null}
          <ProblemTable name="desk.rowProblemsName" problems={rowProblems} />
        </details>
      )}
      {farValues.length === 0 ? null : (
        <details>
          <summary>
            <Count k="desk.farValues" at="/farValueCount" />
          </summary>
          <ProblemTable name="desk.farValuesName" problems={farValues} />
        </details>
      )}
    </section>
  );
}

interface TableProps {
  readonly name: MessageKey;
  readonly problems: DeskInput["problems"];
}

function ProblemTable({ name, problems }: TableProps) {
  const { words } = useReading();
  return (
    <Scroll name={words.text("table.scroll", { name: words.text(name) })}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.text("desk.place")}</th>
            <th scope="col">{words.text("desk.problem")}</th>
            <th scope="col">{words.text("desk.remedy")}</th>
            <th scope="col">{words.text("desk.level")}</th>
          </tr>
        </thead>
        <tbody>
          {problems.map(({ place, problem, remedy, level }, index) => (
            <tr key={`${place}-${problem}-${index}`}>
              <td data-own>{place}</td>
              <td data-own>{problem}</td>
              <td data-own>{remedy}</td>
              <td class={`level-${level}`}>{words.text(`desk.level.${level}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}
