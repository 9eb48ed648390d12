import { type Fraction, ONE, ZERO } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Linear, Point } from "./linear.ts";

/** A sheet to be fitted; alone it has no name. */
export interface Dish {
  readonly name: string | undefined;
  readonly sheet: Sheet;
}

/** Ends of what a factor over another may be. */
export interface Range {
  readonly least: Fraction;
  /** Open where only a line's own `most` holds it. */
  readonly most: Fraction | undefined;
}

/** What has a factor of its own: an adjustable line, a part, or a further sheet's base. */
export interface Mover {
  readonly kind: "line" | "part" | "dish";
  /** As the caller knows it: `tofu`, or `pot/tofu` where several sheets are fitted. */
  readonly name: string;
  readonly dish: number;
  /** Its lines, by their place in the sheet. */
  readonly lines: readonly number[];
  readonly range: Range;
  /** A line that is the same for everyone, freed to see what it would have to be: no departure. */
  readonly isDose: boolean;
}

/** What moves and what does not, before any demand is looked at. */
export interface Model {
  readonly dishes: readonly Dish[];
  /** In the order of their names. */
  readonly movers: readonly Mover[];
  /** Movers that hold a line which says nothing of a figure to be reached: they keep the common factor. */
  readonly kept: readonly Mover[];
  /** By dish and line: the place of its mover in `movers`, else `BASE` or `DOSE`. */
  readonly places: readonly (readonly number[])[];
  readonly common: Range;
}

/** The line follows the common factor. */
export const BASE = -1;
/** The line is the same for everyone. */
export const DOSE = -2;

/** What a fit is told beside its demands. */
export interface Ranges {
  readonly common: Range;
  /** By mover name: parts and further sheets' bases. */
  readonly parts: ReadonlyMap<string, Partial<Range>>;
  /** Name of the dish whose base sets the common factor. */
  readonly base: string | undefined;
}

/** A line, by dish and place. */
export interface LineAt {
  readonly dish: number;
  readonly line: number;
}

/** Lines to be taken as adjustable though their recipe does not, within the usual range or any; doses within any. */
export interface Freed {
  readonly lines: readonly LineAt[];
  readonly within: "usual" | "any";
}

const NONE: Freed = { lines: [], within: "usual" };

/** Half to double: what a ratio may become unless told. */
const USUAL: Range = { least: { n: 1n, d: 2n }, most: { n: 2n, d: 1n } };

/**
 * Sorts lines by how they move. `silent` lines hold their whole mover at the common factor.
 */
export function modelOf(
  dishes: readonly Dish[],
  ranges: Ranges,
  silent: readonly LineAt[],
  freed: Freed = NONE,
): Model {
  const isIn = (all: readonly LineAt[], dish: number, line: number): boolean =>
    all.some((at) => at.dish === dish && at.line === line);
  const groups = dishes.flatMap((dish, d) => groupsOf(dish, d, (line) => isIn(freed.lines, d, line)));
  const base = baseOf(groups, dishes, ranges.base);
  const all = groups
    .filter((group) => group !== base)
    .map((group): Mover => ({ ...group, range: rangeOf(group, dishes, ranges, freed) }))
    .sort((a, b) => compareText(a.name, b.name) || compareText(a.kind, b.kind));
  const isKept = (mover: Mover): boolean => mover.lines.some((line) => isIn(silent, mover.dish, line));
  const movers = all.filter((mover) => !isKept(mover));
  const places = dishes.map(({ sheet }) =>
    sheet.plan.lines.map(({ line }) => (line.scaling === "per-portion" ? DOSE : BASE)),
  );
  movers.forEach((mover, j) => {
    for (const line of mover.lines) (places[mover.dish] as number[])[line] = j;
  });
  return { dishes, movers, kept: all.filter(isKept), places, common: ranges.common };
}

/** By code unit, so that no reader's language has a say. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The name of something of a dish, as the caller knows it. */
export function nameIn({ name }: Dish, own: string): string {
  return name === undefined ? own : `${name}/${own}`;
}

type Group = Omit<Mover, "range"> & { readonly own: string };

/** The groups of one sheet: its unnamed held lines, its parts, and each adjustable line. */
function groupsOf(dish: Dish, d: number, isFreed: (line: number) => boolean): Group[] {
  const found = new Map<string, Pick<Group, "kind" | "own" | "isDose"> & { readonly lines: number[] }>();
  dish.sheet.plan.lines.forEach(({ line }, i) => {
    if (line.scaling === "per-portion" && !isFreed(i)) return;
    const alone = line.scaling === "adjustable" || isFreed(i);
    const kind = alone ? "line" : line.part === undefined ? "dish" : "part";
    const own = alone ? line.key : (line.part ?? "");
    const isDose = line.scaling === "per-portion";
    const group = found.get(`${kind}:${own}`) ?? { kind, own, isDose, lines: [] };
    group.lines.push(i);
    found.set(`${kind}:${own}`, group);
  });
  return [...found.values()].map((group) => {
    const name = group.kind === "dish" ? (dish.name ?? "") : nameIn(dish, group.own);
    return { ...group, name, dish: d };
  });
}

/** The group whose factor is the common one: unnamed held lines, else the first part by name. */
function baseOf(
  groups: readonly Group[],
  dishes: readonly Dish[],
  named: string | undefined,
): Group | undefined {
  const first = (d: number): Group | undefined => {
    const own = groups.filter((group) => group.dish === d);
    const parts = own.filter(({ kind }) => kind === "part");
    return own.find(({ kind }) => kind === "dish") ?? parts.sort((a, b) => compareText(a.own, b.own))[0];
  };
  const order = dishes.map((_, d) => d).sort((a, b) => Number(isNamed(b)) - Number(isNamed(a)));
  for (const d of order) {
    const found = first(d);
    if (found) return found;
  }
  return undefined;

  function isNamed(d: number): boolean {
    return named !== undefined && dishes[d]?.name === named;
  }
}

function rangeOf(group: Group, dishes: readonly Dish[], { parts }: Ranges, freed: Freed): Range {
  if (group.kind !== "line") {
    const told = parts.get(group.name);
    return told ? { ...USUAL, ...told } : USUAL;
  }
  const line = dishes[group.dish]?.sheet.plan.lines[group.lines[0] ?? 0];
  const isFreed = line?.line.scaling !== "adjustable" && freed.within === "any";
  if (isFreed || group.isDose) return { least: ZERO, most: undefined };
  if (line?.least === undefined && line?.most === undefined) return USUAL;
  // A line's own least or most is grams of one portion, a row of its own, and replaces that end.
  return {
    least: line?.least === undefined ? USUAL.least : ZERO,
    most: line?.most === undefined ? USUAL.most : undefined,
  };
}

/** The point that the recipe was written at. */
export function asWritten(model: Model): Point {
  return { ratios: model.movers.map(() => ONE), u: ONE };
}

/** What lines bring, by dish and line, in whole numbers over one scale. */
export interface ByLine {
  readonly lines: readonly (readonly bigint[])[];
  readonly scale: bigint;
}

/** What lines bring, gathered by how they move. */
export function gather({ movers, places }: Model, { lines, scale }: ByLine): Linear {
  let [still, dose] = [0n, 0n];
  const each = new Array<bigint>(movers.length).fill(0n);
  lines.forEach((ofDish, d) => {
    ofDish.forEach((own, i) => {
      if (own === 0n) return;
      const place = places[d]?.[i] ?? BASE;
      if (place === BASE) still += own;
      else if (place === DOSE) dose += own;
      else each[place] = (each[place] as bigint) + own;
    });
  });
  return { still, each, dose, scale };
}
