import { type Exact, ONE, over, times } from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type LineGroup, lineGroups } from "./groups.ts";
import { ANY, type FactorRange, lineRange, partRange } from "./halfToDouble.ts";
import type { Linear, Point } from "./linear.ts";

/** A sheet to be fitted; alone it has no name. */
export interface Dish {
  readonly name: string | undefined;
  readonly sheet: Sheet;
  /** What its moving lines were multiplied by beforehand: departures and factors count from there. */
  readonly before?: Exact;
  /** Whether all of it stays as it is, whatever its lines say. */
  readonly isFixed?: boolean;
}

/** What has a factor of its own: an adjustable line, a part, or a further sheet as a whole. */
export interface Mover {
  readonly kind: LineGroup["kind"];
  /** As the caller knows it: `tofu`, or `pot/tofu` where several sheets are fitted. */
  readonly name: string;
  readonly dish: number;
  /** Its lines, by their place in the sheet; of a sheet, those of its base. */
  readonly lines: readonly number[];
  /** Ends of its factor over its dish's; of a sheet, over the common factor. */
  readonly range: FactorRange;
  /** A line that is the same for everyone, freed to see what it would have to be: no departure. */
  readonly isDose: boolean;
}

/** What moves and what does not, before any demand is looked at. */
export interface Model {
  readonly dishes: readonly Dish[];
  /** In the order of their names. */
  readonly movers: readonly Mover[];
  /** Movers that hold a line which says nothing of a figure to be reached: they keep their dish's factor. */
  readonly kept: readonly Mover[];
  /** By dish and line: the place of its mover in `movers`, else `BASE` or `DOSE`. */
  readonly places: readonly (readonly number[])[];
  /** By dish: the place of what has the dish's factor; `BASE` where that is the common factor. */
  readonly bases: readonly number[];
  readonly common: FactorRange;
}

/** The line follows the common factor. */
export const BASE = -1;
/** The line is the same for everyone. */
export const DOSE = -2;

/** What a fit is told beside its demands. */
export interface Ranges {
  readonly common: FactorRange;
  /** By mover name: parts, and further sheets. */
  readonly parts: ReadonlyMap<string, Partial<FactorRange>>;
  /** Name of the dish whose factor is the common one. */
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

/**
 * Sorts lines by how they move: with their dish's base, or alone or in a part beside it. One dish's
 * factor is the common one; each further dish has a factor of its own. `silent` lines hold their whole
 * mover at their dish's factor.
 */
export function modelOf(
  dishes: readonly Dish[],
  ranges: Ranges,
  silent: readonly LineAt[],
  freed: Freed = NONE,
): Model {
  const groups = dishes.map((dish, d) => groupsIn(dish, d, freed.lines));
  const bases = groups.map(baseOf);
  const lead = leadOf(dishes, groups, bases, ranges.base);
  const all = groups
    .flatMap((own, d): Mover[] => {
      const beside = own.filter((group) => group !== bases[d]);
      const movers = beside.map((group) => moverOf(group, dishes, ranges, freed));
      return d === lead || own.length === 0 ? movers : [sheetOf(d, bases[d], dishes, ranges), ...movers];
    })
    .sort((a, b) => compareText(a.name, b.name) || compareText(a.kind, b.kind));
  const isSilent = ({ kind, dish, lines }: Mover): boolean =>
    kind !== "dish" && silent.some((at) => at.dish === dish && lines.includes(at.line));
  const kept = silent.length === 0 ? [] : all.filter(isSilent);
  const movers = kept.length === 0 ? all : all.filter((mover) => !kept.includes(mover));
  const basePlaces = dishes.map((_, d) =>
    movers.findIndex(({ kind, dish }) => kind === "dish" && dish === d),
  );
  const places = dishes.map(({ sheet }, d) =>
    sheet.plan.lines.map(({ line }) =>
      line.scaling === "per-portion" || dishes[d]?.isFixed ? DOSE : (basePlaces[d] as number),
    ),
  );
  movers.forEach((mover, j) => {
    for (const line of mover.lines) (places[mover.dish] as number[])[line] = j;
  });
  return { dishes, movers, kept, places, bases: basePlaces, common: rangeOver(ranges.common, dishes[lead]) };
}

/** The place of what a mover departs from: its dish's factor, a sheet's own from the common one. */
export function baseOfMover({ bases }: Model, { kind, dish }: Mover): number {
  return kind === "dish" ? BASE : (bases[dish] ?? BASE);
}

/** The name of something of a dish, as the caller knows it. */
export function nameIn({ name }: Dish, own: string): string {
  return name === undefined ? own : `${name}/${own}`;
}

/** A group of lines, with the dish it is in and the name that the caller knows it by. */
interface Named extends LineGroup {
  readonly dish: number;
  readonly name: string;
}

function groupsIn(dish: Dish, d: number, freed: readonly LineAt[]): Named[] {
  if (dish.isFixed) return [];
  const own = freed.flatMap((at) => (at.dish === d ? at.line : []));
  return lineGroups(dish.sheet, own).map(({ kind, own, lines, isDose }) => {
    const name = kind === "dish" ? (dish.name ?? "") : nameIn(dish, own);
    return { kind, own, lines, isDose, dish: d, name };
  });
}

/** The group whose factor is its dish's: unnamed held lines, else the first part by name. */
function baseOf(groups: readonly Named[]): Named | undefined {
  const parts = groups.filter(({ kind }) => kind === "part");
  return groups.find(({ kind }) => kind === "dish") ?? parts.sort((a, b) => compareText(a.own, b.own))[0];
}

/** The dish whose factor is the common one: the one named, else the first by name that has held lines. */
function leadOf(
  dishes: readonly Dish[],
  groups: readonly (readonly Named[])[],
  bases: readonly (Named | undefined)[],
  named: string | undefined,
): number {
  const isNamed = (d: number): boolean => named !== undefined && dishes[d]?.name === named;
  const order = dishes.map((_, d) => d).sort((a, b) => Number(isNamed(b)) - Number(isNamed(a)));
  return order.find((d) => bases[d]) ?? order.find((d) => groups[d]?.length) ?? 0;
}

function moverOf(group: Named, dishes: readonly Dish[], ranges: Ranges, freed: Freed): Mover {
  const { kind, name, dish, lines, isDose } = group;
  return { kind, name, dish, lines, range: rangeOf(group, dishes, ranges, freed), isDose };
}

/** A further sheet as a whole, which may be of any size beside the others unless told. */
function sheetOf(dish: number, base: Named | undefined, dishes: readonly Dish[], { parts }: Ranges): Mover {
  const name = dishes[dish]?.name ?? "";
  const range = { ...ANY, ...parts.get(name) };
  return { kind: "dish", name, dish, lines: base?.lines ?? [], range, isDose: false };
}

function rangeOf(group: Named, dishes: readonly Dish[], { parts }: Ranges, freed: Freed): FactorRange {
  if (group.kind !== "line") {
    return partRange(parts.get(group.name));
  }
  const line = dishes[group.dish]?.sheet.plan.lines[group.lines[0] ?? 0];
  const isFreed = line?.line.scaling !== "adjustable" && freed.within === "any";
  if (isFreed || group.isDose) return ANY;
  return lineRange(line);
}

/** Ends of a factor of the recipe as written, over what its dish was multiplied by beforehand. */
export function rangeOver(range: FactorRange, dish: Dish | undefined): FactorRange {
  const before = dish?.before;
  if (!before || before.n === 0n) return range;
  return { least: over(range.least, before), most: range.most && over(range.most, before) };
}

/** The point that the recipe was written at. */
export function pointAsWritten(model: Model): Point {
  return { ratios: model.movers.map(() => ONE), u: ONE };
}

/** What each line is multiplied by at a point, by dish and line. */
export function lineFactorsAt(
  { places, dishes }: Model,
  { ratios, u }: Point,
): readonly (readonly Exact[])[] {
  const common = over(ONE, u);
  const moved = ratios.map((ratio) => times(ratio, common));
  return places.map((ofDish, d) => {
    const before = dishes[d]?.before;
    const at = (place: number): Exact => (place === BASE ? common : (moved[place] ?? common));
    return ofDish.map((place) => (place === DOSE ? ONE : before ? times(before, at(place)) : at(place)));
  });
}

/** What each mover is over its dish's factor, a sheet over the common one: 1 keeps the recipe's proportion. */
export function proportionsAt(model: Model, { ratios }: Point): Exact[] {
  return model.movers.map((mover, j) => {
    const own = ratios[j] ?? ONE;
    const base = baseOfMover(model, mover);
    const dish = base === BASE ? ONE : (ratios[base] ?? ONE);
    // Of nothing there are no proportions to leave.
    return dish.n === 0n ? ONE : over(own, dish);
  });
}

/** What lines bring, by dish and line, in whole numbers over one scale. */
export interface ByLine {
  readonly lines: readonly (readonly bigint[])[];
  readonly scale: bigint;
}

/** What lines bring, gathered by how they move. */
export function gather({ movers, places }: Model, { lines, scale }: ByLine): Linear {
  let [still, dose] = [0n, 0n];
  const all = new Array<bigint>(movers.length).fill(0n);
  lines.forEach((ofDish, d) => {
    const at = places[d] as readonly number[];
    for (let i = 0; i < ofDish.length; i += 1) {
      const own = ofDish[i] as bigint;
      if (own === 0n) continue;
      const place = at[i] as number;
      if (place === BASE) still += own;
      else if (place === DOSE) dose += own;
      else all[place] = (all[place] as bigint) + own;
    }
  });
  const [bringing, each]: [number[], bigint[]] = [[], []];
  for (let j = 0; j < all.length; j += 1) {
    if (all[j] === 0n) continue;
    bringing.push(j);
    each.push(all[j] as bigint);
  }
  return { still, movers: bringing, each, dose, scale };
}

/** So much of what moves as the mover at `place` does, or as `BASE` or `DOSE`, and nothing else. */
export function amountAt(place: number, { n, d }: Exact): Linear {
  const isMover = place >= 0 && n !== 0n;
  return {
    still: place === BASE ? n : 0n,
    movers: isMover ? [place] : [],
    each: isMover ? [n] : [],
    dose: place === DOSE ? n : 0n,
    scale: d,
  };
}
