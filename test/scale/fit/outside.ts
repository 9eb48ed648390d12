import type { ModelData } from "highs";
import { energySystems } from "../../../src/food/energy.ts";
import type { LineInput, RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand, Quantity } from "../../../src/scale/demand.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { highs } from "../solve/outside.ts";

/**
 * Fits written out once more, in binary floats, from what a sheet shows and what its recipe says;
 * nothing of the library's own programme is used. For a registry solver (HiGHS) to answer.
 */

interface Row {
  readonly low: number;
  readonly high: number;
  readonly of: ReadonlyMap<number, number>;
}

export class Model {
  readonly #columns: { cost: number; low: number; high: number }[] = [];
  readonly #rows: Row[] = [];

  column(cost: number, low: number, high: number): number {
    this.#columns.push({ cost, low, high });
    return this.#columns.length - 1;
  }

  row(low: number, high: number, ...terms: (readonly [column: number, coefficient: number])[]): void {
    const of = new Map<number, number>();
    for (const [j, c] of terms) of.set(j, (of.get(j) ?? 0) + c);
    this.#rows.push({ low, high, of });
  }

  cost(column: number, cost: number): void {
    (this.#columns[column] as { cost: number }).cost = cost;
  }

  /** A copy with something added. */
  with(add: (copy: Model) => void): Model {
    const copy = new Model();
    copy.#columns.push(...this.#columns.map((column) => ({ ...column })));
    copy.#rows.push(...this.#rows);
    add(copy);
    return copy;
  }

  get data(): ModelData {
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    for (const { of } of this.#rows) {
      for (const [j, value] of of) {
        if (value === 0) continue;
        indices.push(j);
        values.push(value);
      }
      starts.push(indices.length);
    }
    const [numCols, numRows] = [this.#columns.length, this.#rows.length];
    return {
      numCols,
      numRows,
      colCost: Float64Array.from(this.#columns, (c) => c.cost),
      colLower: this.#columns.map((c) => c.low),
      colUpper: this.#columns.map((c) => c.high),
      rowLower: this.#rows.map((r) => r.low),
      rowUpper: this.#rows.map((r) => r.high),
      matrix: { format: "csr", numRows, numCols, starts, indices, values },
    };
  }
}

export interface Solved {
  readonly status: "optimal" | "infeasible" | "other";
  readonly objective: number;
  readonly x: readonly number[];
}

export function solved(model: Model): Solved {
  return highs.withModel(model.data, (made) => {
    made.options.set({
      output_flag: false,
      primal_feasibility_tolerance: 1e-9,
      dual_feasibility_tolerance: 1e-9,
    });
    made.run();
    const status = made.getModelStatus();
    const names = highs.constants.modelStatus;
    const isBest = status === names.optimal;
    return {
      status: isBest ? "optimal" : status === names.infeasible ? "infeasible" : "other",
      objective: isBest ? made.getObjectiveValue() : Number.NaN,
      x: isBest ? [...made.getSolution().colValue] : [],
    } as const;
  });
}

/** What lines bring to one portion of a quantity, by line, in floats. */
export type Brings = (of: Quantity) => readonly number[];

export function bringsOf(s: Sheet): Brings {
  const portions = s.portions.toNumber();
  const pot = s.lines.filter((l) => l.added === "cooking");
  const raw = pot.reduce((all, l) => all + l.grams.toNumber(), 0);
  const served = s.lines.filter((l) => l.added === "serving").reduce((all, l) => all + l.grams.toNumber(), 0);
  const yields = raw === 0 ? 1 : (s.mass.cooked.toNumber() - served) / raw;
  return (of) =>
    s.lines.map((l) => {
      if (of === "mass") return (l.grams.toNumber() * (l.added === "cooking" ? yields : 1)) / portions;
      return s.cell(l.key, of).value.toNumber() / portions;
    });
}

/** What is bounded as a difference of two sums by line, `value − bound × per`; `per` of one portion is 1. */
export interface Side {
  readonly value: readonly number[];
  readonly per: readonly number[] | "portion";
  readonly least: number | undefined;
  readonly most: number | undefined;
}

export function sideOf(demand: Demand, brings: Brings): Side {
  const number = (v: unknown): number | undefined => {
    if (v === undefined) return undefined;
    const [n = "", d = "1"] = String(v).split("/");
    return Number(n) / Number(d);
  };
  const exactly = number(demand.exactly);
  const ends = { least: exactly ?? number(demand.least), most: exactly ?? number(demand.most) };
  if (demand.of !== undefined) return { value: brings(demand.of), per: "portion", ...ends };
  if (demand.ratioOf !== undefined) {
    return { value: brings(demand.ratioOf[0]), per: brings(demand.ratioOf[1]), ...ends };
  }
  const { parts } = energySystems["atwater-general"];
  const energy = (part: keyof typeof parts): number[] => {
    const term = parts[part];
    return term ? brings(term.component).map((grams) => grams * Number(term.factor)) : [];
  };
  const all = (Object.keys(parts) as (keyof typeof parts)[]).map(energy);
  const per = brings("mass").map((_, i) => all.reduce((sum, own) => sum + (own[i] ?? 0), 0));
  return { value: energy(demand.energyShareOf as keyof typeof parts), per, ...ends };
}

/** How a line moves: with the base, alone or with its part, or not at all. */
export function groupsOf(lines: readonly LineInput[]): readonly (string | "base" | "dose")[] {
  return lines.map((l) => {
    if (l.scaling === "per-portion") return "dose";
    if (l.scaling === "adjustable") return `line ${l.key}`;
    return l.part === undefined ? "base" : `part ${l.part}`;
  });
}

const gramsIn = (text: unknown): number | undefined => {
  if (text === undefined) return undefined;
  const [n = "", d = "1"] = String(text).replace(" g", "").split("/");
  return Number(n) / Number(d);
};

/** Ends of a group's ratio to the common factor, and its lines' own bounds in grams of a portion. */
export function boundsOf(
  lines: readonly LineInput[],
  i: number,
): { low: number; high: number; least?: number; most?: number } {
  const line = lines[i];
  const [least, most] = [gramsIn(line?.least), gramsIn(line?.most)];
  const isAlone = line?.scaling === "adjustable";
  return {
    low: isAlone && least !== undefined ? 0 : 0.5,
    high: isAlone && most !== undefined ? highs.infinity : 2,
    ...(least !== undefined && { least }),
    ...(most !== undefined && { most }),
  };
}

/** A fit over ratios to the common factor; the last column is one over that factor. */
export function ratioModel(
  recipe: RecipeInput,
  s: Sheet,
  demands: readonly Demand[],
): { model: Model; u: number } {
  const model = new Model();
  const groups = groupsOf(recipe.lines);
  const brings = bringsOf(s);
  const ratio = new Map<string, number>();
  groups.forEach((group, i) => {
    if (group === "base" || group === "dose" || ratio.has(group)) return;
    const { low, high } = boundsOf(recipe.lines, i);
    const r = model.column(0, low, high);
    const rise = model.column(1, 0, highs.infinity);
    const fall = model.column(2, 0, highs.infinity);
    model.row(1, 1, [r, 1], [rise, -1], [fall, 1]);
    ratio.set(group, r);
  });
  const one = model.column(0, 1, 1);
  const u = model.column(0, 0.1, 10);
  const columnOf = (i: number): number => {
    const group = groups[i] ?? "base";
    return group === "base" ? one : group === "dose" ? u : (ratio.get(group) ?? one);
  };
  for (const demand of demands) {
    const { value, per, least, most } = sideOf(demand, brings);
    const against = (bound: number): (readonly [number, number])[] => [
      ...value.map((v, i) => [columnOf(i), v] as const),
      ...(per === "portion" ? [[u, -bound] as const] : per.map((v, i) => [columnOf(i), -bound * v] as const)),
    ];
    if (least !== undefined) model.row(0, highs.infinity, ...against(least));
    if (most !== undefined) model.row(-highs.infinity, 0, ...against(most));
  }
  const grams = s.lines.map((l) => l.grams.toNumber() / s.portions.toNumber());
  recipe.lines.forEach((_, i) => {
    const { least, most } = boundsOf(recipe.lines, i);
    if (groups[i] === "dose") return;
    if (least !== undefined) model.row(0, highs.infinity, [columnOf(i), grams[i] ?? 0], [u, -least]);
    if (most !== undefined) model.row(-highs.infinity, 0, [columnOf(i), grams[i] ?? 0], [u, -most]);
  });
  return { model, u };
}

/** A miss: its column in a model, what one of it counts, and what it is a miss of. */
interface Missed {
  readonly demand: Demand;
  readonly end: "least" | "most";
  readonly column: number;
  readonly weight: number;
  /** Misses of one rank are made least as one: `amount`, `nothing`, `share`, or what a ratio is to. */
  readonly rank: string;
  /** By line, what their total is taken over; one portion for amounts. */
  readonly per: Side["per"];
}

/** A fit over factors themselves, where misses are amounts of the portion; departures are not linear here. */
export interface MissModel {
  readonly model: Model;
  readonly misses: readonly Missed[];
  /** The column that a line moves with. */
  readonly columnOf: (line: number) => number;
}

export function missModel(recipe: RecipeInput, s: Sheet, demands: readonly Demand[]): MissModel {
  const model = new Model();
  const groups = groupsOf(recipe.lines);
  const brings = bringsOf(s);
  const common = model.column(0, 0.1, 10);
  const one = model.column(0, 1, 1);
  const factor = new Map<string, number>();
  groups.forEach((group, i) => {
    if (group === "base" || group === "dose" || factor.has(group)) return;
    const { low, high } = boundsOf(recipe.lines, i);
    const f = model.column(0, 0, highs.infinity);
    model.row(0, highs.infinity, [f, 1], [common, -low]);
    if (high !== highs.infinity) model.row(-highs.infinity, 0, [f, 1], [common, -high]);
    factor.set(group, f);
  });
  const columnOf = (i: number): number => {
    const group = groups[i] ?? "base";
    return group === "base" ? common : group === "dose" ? one : (factor.get(group) ?? common);
  };
  const moving = (by: readonly number[]): number =>
    by.reduce((sum, own, i) => sum + (groups[i] === "dose" ? 0 : own), 0);
  const misses: Missed[] = [];
  for (const demand of demands) {
    const { value, per, least, most } = sideOf(demand, brings);
    const written = moving(value) / (per === "portion" ? 1 : moving(per));
    const kind = demand.ratioOf?.[1] ?? (demand.energyShareOf === undefined ? "amount" : "share");
    const end = (bound: number, sign: 1 | -1): void => {
      const column = model.column(0, 0, highs.infinity);
      const weight = 1 / (bound || written || 1);
      const rank = kind === "amount" && bound === 0 ? "nothing" : kind;
      misses.push({ demand, end: sign > 0 ? "least" : "most", column, weight, rank, per });
      const against: (readonly [number, number])[] =
        per === "portion" ? [[one, -bound]] : per.map((v, i) => [columnOf(i), -bound * v] as const);
      const terms = [...value.map((v, i) => [columnOf(i), v] as const), ...against, [column, sign] as const];
      if (sign > 0) model.row(0, highs.infinity, ...terms);
      else model.row(-highs.infinity, 0, ...terms);
    };
    if (least !== undefined) end(least, 1);
    if (most !== undefined) end(most, -1);
  }
  const grams = s.lines.map((l) => l.grams.toNumber() / s.portions.toNumber());
  recipe.lines.forEach((_, i) => {
    const { least, most } = boundsOf(recipe.lines, i);
    if (groups[i] === "dose") return;
    if (least !== undefined) model.row(least, highs.infinity, [columnOf(i), grams[i] ?? 0]);
    if (most !== undefined) model.row(-highs.infinity, most, [columnOf(i), grams[i] ?? 0]);
  });
  return { model, misses, columnOf };
}

/** Whether a rank's total of misses can be so low, and whether it can be lower. */
export interface Reached {
  readonly rank: string;
  readonly can: boolean;
  readonly canLess: boolean;
}

/**
 * Tries totals of misses, rank by rank, each among what is as good by those before it: whether
 * anything reaches a total, and whether anything stays under it by more than `slack`, of itself and
 * of 1. Over a given total this is linear, whatever it is the total of.
 */
export function tryTotals(
  { model, misses, columnOf }: MissModel,
  totals: readonly (readonly [rank: string, total: number])[],
  slack: number,
): Reached[] {
  return totals.flatMap(([rank, total]): Reached[] => {
    const own = misses.filter((miss) => miss.rank === rank);
    const per = own[0]?.per;
    if (!per) return [];
    const weighted = own.map(({ column, weight }) => [column, weight] as const);
    const under = (copy: Model, most: number): void => {
      const over = per === "portion" ? [] : per.map((v, i) => [columnOf(i), -most * v] as const);
      copy.row(Number.NEGATIVE_INFINITY, per === "portion" ? most : 0, ...weighted, ...over);
    };
    const can = (most: number): boolean =>
      solved(model.with((copy) => under(copy, most))).status === "optimal";
    const less = total - slack * (1 + total);
    const reached = { rank, can: can(total + 1e-8), canLess: less > 0 && can(less) };
    under(model, total + 1e-8);
    return [reached];
  });
}
