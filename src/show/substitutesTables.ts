import { allergens } from "../food/allergens.ts";
import { type ComponentId, components } from "../food/components.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, fraction } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { matchName } from "../scale/substitutes/match.ts";
import { movesOf } from "../scale/substitutes/moves.ts";
import type { Substitutes } from "../scale/substitutes/result.ts";
import type { Tally } from "../sheet/tally.ts";
import { figureCell } from "./figure.ts";
import { type Table, type TableFigure, table } from "./table.ts";
import { plainFigure } from "./tallyFigure.ts";

/** What could stand in and what it would change, the closest first. */
export function substitutesTables(s: Substitutes): readonly Table[] {
  const changed = [...new Set(s.found.flatMap(({ changes }) => changes.map((c) => c.component)))];
  const beside = [...new Set(s.found.flatMap(({ also }) => also.map((c) => c.component)))];
  return [
    table({
      title: `${s.of().sheet.name}: instead of ${s.of().name}`,
      columns: [
        { key: "food", heading: "Instead" },
        { key: "state", heading: "State" },
        { key: "grams", heading: "Mass", unit: "g", align: "end" },
        ...changed.map((id) => ({
          key: id,
          heading: components[id].name,
          unit: "% more",
          align: "end" as const,
        })),
        ...beside.map((id) => ({
          key: id,
          heading: components[id].name,
          unit: `${components[id].unit} more`,
          align: "end" as const,
        })),
      ],
      rows: s.found.map((found) => {
        const moves = movesOf(s.of().sheet, found);
        const told = new Set([...found.changes, ...found.also].map(({ component }) => component));
        const cell = (id: ComponentId, by: (id: ComponentId) => Tally): TableFigure =>
          told.has(id) ? plainFigure(by(id), { significant: 2 }) : figureCell(null);
        return [
          found.name,
          found.state ?? "",
          figureCell(found.grams),
          ...changed.map((id) => cell(id, (each) => moves.share(each).times(HUNDRED))),
          ...beside.map((id) => cell(id, moves.by)),
        ];
      }),
      notes: [
        ...(s.why === undefined
          ? [`each brings as much ${matchName(s.match)} as ${s.of().name} did`]
          : [`nothing stands in: ${s.why}`]),
        ...s.opens.map((open) => `what would open it: ${open}`),
        ...s.found.flatMap(({ name, cautions }) => cautions.map((c) => `${name}: ${c.text} (${c.source})`)),
        ...avoidedNotes(s),
        ...untoldNotes(s),
        ...(s.unknown.length > 0 ? [`allergens not known, left out: ${s.unknown.join(", ")}`] : []),
        ...leftNotes(s),
      ],
    }),
  ];
}

/** Foods by what they hold. */
function avoidedNotes(s: Substitutes): string[] {
  const by = new Map<string, string[]>();
  for (const { food, holds } of s.avoided) {
    const names = holds.map((a) => allergens[a].name).join(", ");
    by.set(names, [...(by.get(names) ?? []), food]);
  }
  return [...by].map(([names, foods]) => `with ${names}, left out: ${foods.join(", ")}`);
}

function leftNotes(s: Substitutes): string[] {
  const { without, outside } = s;
  const grams = (f: Exact): string => showFigure(f, { unit: "g" });
  const amounts = outside.map(({ food, grams: needed, least, most }) => {
    const end = compareRatios(needed, most) > 0 ? `at most ${grams(most)}` : `at least ${grams(least)}`;
    return `${food} (${grams(needed)}, served ${end})`;
  });
  return [
    ...(without.length > 0
      ? [`no ${matchName(s.match)}, or silent on it, left out: ${without.join(", ")}`]
      : []),
    ...(amounts.length > 0 ? [`not as a cook would serve it, left out: ${amounts.join(", ")}`] : []),
  ];
}

function untoldNotes(s: Substitutes): string[] {
  if (s.untold.length === 0) return [];
  const told = s.found.filter(({ tells }) => tells.length > 0);
  return [
    `${s.of().name} says nothing of ${namesOf(s.untold)}, so that nothing is held close to it`,
    ...told.map(({ name, tells }) => `${name} tells of ${namesOf(tells)}`),
  ];
}

const namesOf = (ids: readonly ComponentId[]): string => ids.map((id) => components[id].name).join(", ");

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);
