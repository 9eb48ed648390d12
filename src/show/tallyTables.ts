import { type Language, say } from "../document/language.ts";
import { fraction } from "../number/exact.ts";
import type { EnergyShares } from "../sheet/energy.ts";
import { keyWords } from "../sheet/names.ts";
import type { Tally } from "../sheet/tally.ts";
import { figureCell, legend } from "./figure.ts";
import { type Row, type Table, table } from "./table.ts";
import { silentNotes, tallyFigure } from "./tallyFigure.ts";
import { tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** The one figure, with what its marks mean and which lines are silent. */
export function tallyTables(tally: Tally, language: Language): readonly Table[] {
  const cell = tallyFigure(tally, { language, ...(tally.unit !== "" && { unit: tally.unit }) });
  const rows: Row[] = [{ kind: "body", cells: [cell] }];
  const said = [...new Set(tally.missing.map(keyWords))].join(", ");
  return [
    table({
      columns: [{ key: "figure", heading: say(language, "Figure"), align: "end" }],
      rows,
      notes: [
        ...legend(rows, language),
        ...(said === "" ? [] : [say(language, "no data: {lines}", { lines: said })]),
      ],
    }),
  ];
}

/** The one figure as a tidy row. */
export function tallyTidy(tally: Tally, asked: Asked): Tidy {
  return tidyOf(asked, [], () => [tallyRow(tally)]);
}

/** The energy of the batch and what each constituent brings of it, in whole per cents that total 100. */
export function energyTables(e: EnergyShares, language: Language): readonly Table[] {
  const rows: Row[] = [
    ...e.shares.map(({ of, energy, percent }): Row => {
      const share = figureCell(fraction(BigInt(percent)), { language });
      return {
        kind: "body",
        cells: [
          say(language, of === "organicAcids" ? "organic acids" : of),
          tallyFigure(energy, { language }),
          share,
        ],
      };
    }),
    { kind: "total", cells: [say(language, "Energy"), tallyFigure(e.energy, { language }), ""] },
  ];
  return [
    table({
      title: say(language, "Energy by {system}", { system: e.system }),
      columns: [
        { key: "of", heading: say(language, "Of") },
        { key: "energy", heading: say(language, "Energy"), unit: "kcal", align: "end" },
        { key: "percent", heading: say(language, "Share"), unit: "%", align: "end" },
      ],
      rows,
      notes: [
        ...legend(rows, language),
        ...silentNotes(
          e.shares.map(({ of, energy }) => [of, energy] as const),
          language,
        ),
      ],
    }),
  ];
}
