import { type Language, say } from "../document/language.ts";
import { read } from "../document/read.ts";
import { readLanguage } from "../document/readLanguage.ts";
import { showFigure } from "../measure/showFigure.ts";
import { exactText } from "../number/digits.ts";
import { absolute, type Exact, exact, minus, negate, over, plus, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Quantity } from "../scale/demand.ts";
import { quantityName, unitOf } from "../scale/linear.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Bound, Tally } from "../sheet/tally.ts";
import { Shown } from "../show/shown.ts";
import { type Cell, type Table, table } from "../show/table.ts";
import type { Asked, Tidy, TidyRow } from "../show/tidy.ts";
import { type ExactAffine, exactlyThrough } from "./affine.ts";
import { tallyOf, waterTurns } from "./piece.ts";
import { askedSchema } from "./portionsAt.ts";

/** What a figure is at a factor: `fixed + factor × perFactor`. */
export interface AtFactor {
  readonly fixed: Exact;
  readonly perFactor: Exact;
}

/** A component of one portion, or its mass, over a stretch of factors. */
export interface Coefficient {
  readonly component: Quantity;
  readonly unit: string;
  /** Factors above `from`, up to `to`, which is no end where it is undefined. */
  readonly from: Exact;
  readonly to: Exact | undefined;
  /** What is known; undefined where nothing is. */
  readonly value: AtFactor | undefined;
  readonly least: AtFactor | undefined;
  readonly most: AtFactor | undefined;
  readonly bound: Bound;
  /** Lines that say nothing of it. */
  readonly missing: readonly string[];
}

/** The coefficients of a sheet's portion, shown and recorded as a table. */
export class Coefficients extends Shown {
  readonly is = "steelyard/coefficients@1";
  /** Of the sheet. */
  readonly name: string;
  readonly rows: readonly Coefficient[];

  /** @internal Use {@link coefficients}. */
  constructor(name: string, rows: readonly Coefficient[]) {
    super();
    this.name = name;
    this.rows = rows;
  }

  override toString(): string {
    return `${this.name}: ${this.rows.length} coefficients of one portion`;
  }

  override toTables(told?: Language): readonly Table[] {
    const language = readLanguage(told);
    return [tableOf(this, language)];
  }

  /** One row for each coefficient, with `fixed`, `per_factor` and the like of both ends in columns of their own. */
  toRows(asked: Asked): Tidy {
    const wanted = asked.components;
    const rows = this.rows.filter(({ component }) => wanted === undefined || wanted.includes(component));
    return { own: OWN, rows: rows.map((row) => rowOf(this.name, row)) };
  }
}

const OWN: readonly string[] = [
  ...["from_factor", "to_factor", "fixed", "per_factor"],
  ...["least_fixed", "least_per_factor", "most_fixed", "most_per_factor"],
];

/**
 * What a portion of a sheet is at any factor: of each component a fixed part, from lines that are the same
 * for everyone, and a part for each unit of the factor. A query engine needs no more: `factor = (target −
 * fixed) ÷ per_factor` of the target's row, and `fixed + factor × per_factor` of all others. Exact; `toRecords`
 * makes doubles of them, or exact text. Most components have one row. What bounds them may turn at a factor:
 * then they have a row for each stretch. `mass` is among the rows whether or not it is asked for.
 *
 * Throws `component-unknown`, and `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   {
 *     name: "Porridge",
 *     portions: 1,
 *     lines: [
 *       { food: "oats-rolled-dry", amount: "100 g" },
 *       { food: "honey", amount: "10 g", scaling: "per-portion" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const [, energy] = coefficients(porridge, ["energy"]).rows;
 * console.log(`${energy.value?.fixed} + factor × ${energy.value?.perFactor}`); // => 30.4 + factor × 379
 * ```
 */
export function coefficients(s: Sheet, components: readonly Quantity[]): Coefficients {
  checkSheet(s);
  const asked = read(askedSchema(), components, "component-unknown");
  const all = [...new Set<Quantity>(["mass", ...asked])];
  return new Coefficients(
    s.name,
    all.flatMap((of) => stretches(s, of)),
  );
}

/** A quantity over each stretch of factors in which it has one form. */
function stretches(s: Sheet, of: Quantity): Coefficient[] {
  const at = (factor: Exact): Sheet => s.scaled(factor, s.values.portions);
  const turns = of === "water" ? roots(waterTurns(at(ONE)), waterTurns(at(TWO))) : [];
  const all = between(turns).flatMap((outer) => {
    const [first, second] = within(outer).map((factor) => tallyOf(at(factor), of)) as [Tally, Tally];
    const margins = [first, second].map(narrowMargins);
    const corner = within(outer);
    const turned = roots(margins[0] ?? [], margins[1] ?? [], corner).filter(
      (turn) => compareRatios(turn, outer.from) > 0 && (!outer.to || compareRatios(turn, outer.to) < 0),
    );
    return between(turned, outer).map((stretch) => coefficient(at, of, stretch));
  });
  const made: Coefficient[] = [];
  for (const next of all) {
    const last = made.at(-1);
    if (last && isAlike(last, next)) made[made.length - 1] = { ...last, to: next.to };
    else made.push(next);
  }
  return made;
}

/** Whether nothing turns between two stretches: one of two ends that lie wide says no more than both. */
function isAlike(a: Coefficient, b: Coefficient): boolean {
  const said = ({ from: _, to: __, ...rest }: Coefficient): string => JSON.stringify(rest);
  return said(a) === said(b);
}

/** By how much both ends keep within a tenth of a middle figure, where that has a say in how it is bounded. */
function narrowMargins({ value, ends: { low, high }, ranged, below, bound }: Tally): Exact[] {
  if (ranged.length === 0 || below.length > 0 || !low || !high || bound === "unknown") return [];
  const room = over(absolute(value), exact(10));
  return [minus(room, minus(value, low)), minus(room, minus(high, value))];
}

const ONE: Exact = /* @__PURE__ */ exact(1);
const TWO: Exact = /* @__PURE__ */ exact(2);

interface Stretch {
  readonly from: Exact;
  readonly to: Exact | undefined;
}

/** Stretches from 0 on, or of another, that end at turns. */
function between(turns: readonly Exact[], { from, to }: Stretch = { from: ZERO, to: undefined }): Stretch[] {
  const ends = [from, ...[...turns].sort(compareRatios)];
  return ends.map((start, k) => ({ from: start, to: ends[k + 1] ?? to }));
}

/** Two factors inside a stretch. */
function within({ from, to }: Stretch): readonly [Exact, Exact] {
  const length = to ? minus(to, from) : plus(from, exact(3));
  return [plus(from, over(length, exact(3))), plus(from, over(length, TWO))];
}

/** The factors above 0 at which affine functions pass 0, by their values at two factors. */
function roots(
  first: readonly Exact[],
  second: readonly Exact[],
  [a, b]: readonly [Exact, Exact] = [ONE, TWO],
): Exact[] {
  const found = first.flatMap((value, k) => {
    const [fixed, per] = exactlyThrough({ at: [a], steps: [minus(b, a)] }, [value, second[k] ?? value]);
    if (!per || per.n === 0n) return [];
    const root = over(negate(fixed), per);
    return root.n > 0n ? [root] : [];
  });
  return found.filter((root, k) => found.findIndex((other) => compareRatios(other, root) === 0) === k);
}

function coefficient(at: (factor: Exact) => Sheet, of: Quantity, stretch: Stretch): Coefficient {
  const [a, b] = within(stretch);
  const [first, second] = [tallyOf(at(a), of), tallyOf(at(b), of)];
  const form = (x: Exact | undefined, y: Exact | undefined): AtFactor | undefined => {
    if (!x || !y) return undefined;
    const [fixed, perFactor = ZERO]: ExactAffine = exactlyThrough({ at: [a], steps: [minus(b, a)] }, [x, y]);
    return { fixed, perFactor };
  };
  const { bound, missing } = first;
  return {
    component: of,
    unit: unitOf(of),
    ...stretch,
    value: bound === "unknown" ? undefined : form(first.value, second.value),
    least: form(first.least, second.least),
    most: form(first.most, second.most),
    bound,
    missing,
  };
}

function rowOf(sheet: string, row: Coefficient): TidyRow {
  const { component, unit, bound, missing, from, to, value, least, most } = row;
  return {
    sheet,
    row: "portion",
    what: "eaten",
    component,
    unit,
    bound,
    silent: missing.join(", "),
    own: {
      from_factor: from,
      to_factor: to,
      fixed: value?.fixed,
      per_factor: value?.perFactor,
      least_fixed: least?.fixed,
      least_per_factor: least?.perFactor,
      most_fixed: most?.fixed,
      most_per_factor: most?.perFactor,
    },
  };
}

function tableOf({ name, rows }: Coefficients, language: Language): Table {
  const figure = (value: Exact | undefined, unit: string): Cell =>
    value === undefined
      ? { text: "?", value: null, tone: "unknown" }
      : { text: showFigure(value, { unit, language }), value: exactText(value), tone: "known" };
  const turned = new Set(rows.filter(({ to }) => to).map(({ component }) => component));
  const isTurned = turned.size > 0;
  const stretch = ({ component, from, to }: Coefficient): string => {
    if (!turned.has(component)) return "";
    const [low, high] = [showFigure(from, { language }), to ? showFigure(to, { language }) : ""];
    return to
      ? say(language, "{from} to {to}", { from: low, to: high })
      : say(language, "above {from}", { from: low });
  };
  return table({
    title: say(language, "{name}: one portion by its factor", { name }),
    columns: [
      { key: "component", heading: say(language, "component") },
      ...(isTurned ? [{ key: "factors", heading: say(language, "factors") }] : []),
      { key: "fixed", heading: say(language, "fixed"), align: "end" as const },
      { key: "perFactor", heading: say(language, "for each unit of the factor"), align: "end" as const },
      { key: "silent", heading: say(language, "silent") },
    ],
    rows: rows.map((row) => [
      quantityName(row.component),
      ...(isTurned ? [stretch(row)] : []),
      figure(row.value?.fixed, row.unit),
      figure(row.value?.perFactor, row.unit),
      row.missing.join(", "),
    ]),
    notes: [],
  });
}
