import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, exact, fraction, times } from "../number/exact.ts";
import type { EnergyBalance, RangeVerdict } from "../person/compare/balance.ts";
import type { ComparisonData } from "../person/compare/comparison.ts";
import type { EnergyRange, RangeOf } from "../person/ranges/range.ts";
import { type Ends, scaledBy } from "../sheet/ends.ts";
import { bounded } from "./comparisonCells.ts";
import { legend } from "./figure.ts";
import { type Cell, type Table, table } from "./table.ts";

const RANGE_WORDS: { readonly [V in RangeVerdict]: string } = {
  under: "under the range",
  within: "within the range",
  over: "over the range",
  "not-proven": "not proven",
};

const SHARE_NAMES: { readonly [O in RangeOf]?: string } = {
  carbohydrate: "carbohydrate",
  freeSugars: "free sugars",
};

/** Shares of the energy against published ranges, and ratios; nothing where there is no energy. */
export function balanceTables(c: ComparisonData, language: Language): Table[] {
  if (c.balance.length === 0) return [];
  const words = (text: string): string => say(language, text);
  const shares = c.balance.map((row): Cell[] => {
    const { of, range, verdict } = row;
    const name = SHARE_NAMES[of] ?? (Object.hasOwn(components, of) ? components[of as ComponentId].name : of);
    return [
      words(name),
      balanceCell(row, language),
      range ? rangeText(range, language) : "",
      verdict ? words(RANGE_WORDS[verdict]) : "",
    ];
  });
  const ratios = c.ratios.map(({ name, unit, value, bound, least, most }): Cell[] => [
    words(name),
    bounded(value, bound, { language, ...(unit !== "" && { unit: words(unit) }) }, endsOf(least, most)),
    "",
    "",
  ]);
  const said = c.ratios.map(({ name, note }) => `${words(name)}: ${words(note)}`);
  return [
    table({
      title: say(language, "{name}: balance", { name: c.name }),
      columns: [
        { key: "of", heading: words("Of") },
        { key: "portion", heading: words(c.meals > 1 ? "Eaten" : "Portion"), align: "end" },
        { key: "range", heading: words("Published for a day"), align: "end" },
        { key: "verdict", heading: words("Where it stands") },
      ],
      rows: [
        { kind: "group", heading: words("Share of the energy") },
        ...shares,
        { kind: "group", heading: words("Ratios") },
        ...ratios,
      ],
      notes: [...said, ...legend([...shares, ...ratios], language)],
    }),
  ];
}

function balanceCell({ share, bound, least, most }: EnergyBalance, language: Language): Cell {
  const percent = share && times(share, HUNDRED);
  const ends = scaledBy(endsOf(least, most), HUNDRED);
  const shown = bounded(percent, bound, { places: 1, language }, ends);
  if (shown.value === null) return shown;
  return { ...shown, text: say(language, "{figure}%", { figure: shown.text }) };
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);

function endsOf(least: Exact | undefined, most: Exact | undefined): Ends {
  return { low: least && exact(least), high: most && exact(most), told: undefined };
}

function rangeText({ least, most, kind }: EnergyRange, language: Language): string {
  const ends =
    least !== undefined && most !== undefined
      ? "{least} to {most}%, {kind}"
      : most === undefined
        ? "at least {least}%, {kind}"
        : "at most {most}%, {kind}";
  const shown = (end: string | undefined): string => (end ? showFigure(exact(end), { language }) : "");
  return say(language, ends, { least: shown(least), most: shown(most), kind: say(language, kind) });
}
