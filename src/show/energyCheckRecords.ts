import type { EnergyCheck } from "../sheet/energyCheck.ts";
import { pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** Energy as given and as computed, line by line and in all, and the difference where there is a verdict. */
export function energyCheckTidy(check: EnergyCheck, asked: Asked): Tidy {
  return tidyOf(asked, ["name", "verdict", "system", "why"], () => checkRows(check));
}

function* checkRows({ lines, total }: EnergyCheck): Generator<TidyRow> {
  for (const { key, name, given, computed, difference, verdict, system, why, silent } of lines) {
    const said = why ?? (silent.length > 0 ? `${silent.join(", ")} not known` : undefined);
    const own = { name, verdict, system, why: said };
    const head: TidyRow = { line: key, row: "line", component: "energy", own };
    yield { ...head, what: "given", ...tallyRow(given) };
    yield { ...head, what: "computed", ...tallyRow(computed) };
    yield difference
      ? { ...head, what: "change", ...pointRow(difference, "kcal") }
      : { ...head, what: "change", unit: "kcal", bound: "unknown" };
  }
  const all: TidyRow = { row: "total", component: "energy" };
  yield { ...all, what: "given", ...pointRow(total.given, "kcal") };
  yield { ...all, what: "computed", ...pointRow(total.computed, "kcal") };
}
