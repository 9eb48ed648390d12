import { type Language, say } from "../document/language.ts";
import { showPercent } from "../measure/showFigure.ts";
import { type Exact, fraction, isZero, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { DemandDrift, PortionDrift, RatioDrift } from "../plan/measure/drift.ts";
import type { Plan } from "../plan/planned.ts";
import type { Portion } from "../plan/portion.ts";
import { figureCell } from "./figure.ts";
import { outcomeCell } from "./fitTables.ts";
import { isParted } from "./potTables.ts";
import { type Cell, type Table, table } from "./table.ts";

/** What measurable amounts cost in accuracy, person by person; nothing where no kitchen was given. */
export function driftTables(plan: Plan, language: Language): readonly Table[] {
  const rows = plan.portions.flatMap((portion) => {
    if (!portion.drift) return [];
    const who = [nameOf(plan.people, portion.person), nameOf(plan.meals, portion.meal)];
    return driftRows(plan, portion, portion.drift, language).map((cells) => [...who, ...cells]);
  });
  if (rows.length === 0) return [];
  const end = { align: "end" } as const;
  return [
    table({
      title: say(language, "Effect of rounding to kitchen measures"),
      columns: [
        { key: "person", heading: say(language, "Person") },
        { key: "meal", heading: say(language, "Meal") },
        { key: "demand", heading: say(language, "Demand") },
        { key: "asked", heading: say(language, "Asked") },
        { key: "before", heading: say(language, "Before"), ...end },
        { key: "brings", heading: say(language, "Brings"), ...end },
        { key: "off", heading: say(language, "Off by"), ...end },
        { key: "lineByLine", heading: say(language, "Line by line"), ...end },
      ],
      rows,
      notes: [...farNote(plan, language), ...notesOf(plan, language)],
    }),
  ];
}

/** Limits are shown from this share of them on: below it they neither bind nor are near. */
const NEARED: Exact = /* @__PURE__ */ fraction(4n, 5n);

/** Whether a demand is a limit that the portion stays far below, as far as is known. */
function isFar({ limit, holds, before, brings }: DemandDrift): boolean {
  if (!limit || !holds || isZero(limit)) return false;
  const neared = times(limit, NEARED);
  return [before, brings].every((figure) => figure !== null && compareRatios(figure, neared) < 0);
}

function driftRows(plan: Plan, portion: Portion, drift: PortionDrift, language: Language): Cell[][] {
  const demands = drift.demands
    .filter((each) => !isFar(each))
    .map((each) => [
      say(language, each.of),
      each.asked,
      cell(each, each.before),
      cell(each, each.brings),
      offText(each.off, language),
      cell(each, each.lineByLine),
    ]);
  const { ratio, lineByLineRatio } = drift;
  if (!ratio) return demands;
  const farthest = (worst: RatioDrift | undefined): string => offText(worst?.drift ?? null, language);
  const name = lineName(plan, portion, ratio, language);
  const of = say(language, "largest ratio change: {line}", { line: name });
  return [...demands, [of, "", "", "", farthest(ratio), farthest(lineByLineRatio)]];
}

function farNote(plan: Plan, language: Language): string[] {
  const all = plan.portions.flatMap(({ drift }) => drift?.demands ?? []);
  const count = all.filter(isFar).length;
  if (count === 0) return [];
  const share = showPercent(NEARED, { language });
  const text =
    "limits of which a portion brings less than {share}, as far as is known, are left out: {count}";
  return [say(language, text, { share, count: String(count) })];
}

function cell({ unit, demand, bound }: DemandDrift, value: Exact | null): Cell {
  return value ? outcomeCell(value, unit, demand.energyShareOf !== undefined, bound) : figureCell(null);
}

function offText(off: Exact | null, language: Language): string {
  if (!off || off.n === 0n) return "";
  return `${off.n > 0n ? "+" : ""}${showPercent(off, { significant: 2, language })}`;
}

function lineName(plan: Plan, portion: Portion, { dish, line }: RatioDrift, language: Language): string {
  const lines = plan.dish(portion.meal, dish).batch.plan.lines;
  return say(language, lines.find((own) => own.line.key === line)?.source.name ?? line);
}

/** Each note once, with whom it is about where that is not everyone. */
function notesOf(plan: Plan, language: Language): readonly string[] {
  const about = new Map<string, Set<string>>();
  const measured = plan.portions.filter(({ drift }) => drift);
  for (const { person, meal, dishes, kitchenNotes } of measured) {
    // A pot that has no table of its own has its notes here.
    const pots = [...dishes.keys()].flatMap((name) => {
      const dish = plan.dish(meal, name);
      return isParted(dish) ? [] : (dish.serving(person).pot?.notes ?? []);
    });
    for (const { text } of [...pots, ...kitchenNotes])
      about.set(text, (about.get(text) ?? new Set()).add(person));
  }
  const everyone = new Set(measured.map(({ person }) => person)).size;
  return [...about].map(([text, people]) => {
    const names = [...people].map((person) => nameOf(plan.people, person)).join(", ");
    return people.size === everyone
      ? say(language, text)
      : say(language, "{people}: {note}", { people: names, note: say(language, text) });
  });
}

function nameOf(all: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return all.find((each) => each.id === id)?.name ?? id;
}
