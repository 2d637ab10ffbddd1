import type { Balance } from "../desk-view.ts";
import { useReading } from "../reading.ts";
import { Figure } from "./figure.tsx";

/** The four columns of the balance, for one row of a table. */
export function BalanceCells({ at }: { readonly at: string }) {
  return (
    <>
      {(["read", "counted", "notCounted", "setAside"] as const satisfies readonly (keyof Balance)[]).map((key) => (
        <td class="n" key={key}>
          <Figure at={`${at}/${key}`} />
        </td>
      ))}
    </>
  );
}

/** Their heads. */
export function BalanceHeads() {
  const { words } = useReading();
  return (
    <>
      {(["desk.read", "desk.counted", "desk.notCounted", "desk.setAside"] as const).map((key) => (
        <th scope="col" class="n" key={key}>
          {words.text(key)}
        </th>
      ))}
    </>
  );
}
