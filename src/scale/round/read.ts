import type { EnergySystem } from "../../food/energy.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { kitchen as readKitchen } from "../../measure/kitchen.ts";
import { readShare } from "../../measure/share.ts";
import { collect, type Fault, fault, type Path, quote, throwIfAny } from "../../number/error.ts";
import { compare, type Fraction, fraction, ONE, type Value } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import { type EnergyBy, energySystem } from "../../sheet/energy.ts";
import type { Demand } from "../demand.ts";
import { type Asked, askedOf } from "../fit/brought.ts";
import { readDemands } from "../fit/demands.ts";
import type { Dish } from "../fit/model.ts";
import { readDishes } from "../fit/read.ts";
import { readWishes, type Wish } from "./wish.ts";

/** Options of {@link roundToKitchen}. */
export interface RoundHow {
  /** What a portion must still meet. Firm ones are limits; the others may be off by the tolerance. */
  readonly demands?: readonly Demand[];
  /** How far a target may be off, as a share of it, 0 to below 1; 2 % unless told. */
  readonly tolerance?: Value;
  /**
   * Wishes by line key (`sheet/line` where several sheets are rounded): `weigh`, `as-written` to leave
   * the line alone, or a unit (`tbsp`, `ml`, `medium`) that says by what it is measured. Not for
   * per-portion lines, which are never touched.
   */
  readonly lines?: Readonly<Record<string, string>>;
  /** How many amounts are tried on each side of a line's exact one, 1 to 6; 2 unless told. */
  readonly each?: number;
  /** By which factor system shares of energy are reckoned: `atwater-general` unless told. */
  readonly system?: EnergyBy;
  /** Choices looked at before the search stops and says so: 2,000,000 unless told, a second or two at most. */
  readonly nodes?: number;
}

/** What a rounding is handed, read. */
export interface RoundTask {
  /** In the order of their names. */
  readonly dishes: readonly Dish[];
  readonly kitchen: Kitchen;
  readonly asked: readonly Asked[];
  readonly tolerance: Fraction;
  /** By line name. */
  readonly wishes: ReadonlyMap<string, Wish>;
  readonly each: number;
  readonly nodes: number | undefined;
}

const FIELDS: readonly string[] = ["demands", "tolerance", "lines", "each", "system", "nodes"];
const TWO_PER_CENT: Fraction = /* @__PURE__ */ fraction(1n, 50n);
const MOST_EACH = 6;
const MOST_NODES = 1_000_000_000;

/** Reads all that a rounding is handed. Throws every fault at once. */
export function readRounding(given: unknown, place: unknown, how: unknown): RoundTask {
  const faults: Fault[] = [];
  const dishes = collect(faults, [], () => readDishes(given)) ?? [];
  const kitchen = collect(faults, ["kitchen"], () => readKitchen(place));
  const read = collect(faults, ["how"], () => readHow(how, dishes, kitchen));
  throwIfAny(faults);
  if (!kitchen || !read) throw wrong("nothing was read", "hand in a sheet and a kitchen");
  const { demands, system, ...rest } = read;
  return { ...rest, dishes, kitchen, asked: askedOf(dishes, demands, system) };
}

function readHow(how: unknown, dishes: readonly Dish[], kitchen: Kitchen | undefined) {
  if (typeof how !== "object" || how === null || Array.isArray(how))
    throw wrong("the options are not an object", "leave them out, or write { demands: [ … ] }");
  const { demands, tolerance, lines, each, system, nodes } = how as { readonly [field: string]: unknown };
  const faults: Fault[] = [];
  for (const field of Object.keys(how)) {
    if (FIELDS.includes(field)) continue;
    const hint = didYouMean(field, FIELDS, `use ${FIELDS.join(", ")}`);
    faults.push(...wrong(`${quote(field)} is not an option`, hint, [field]).faults);
  }
  const of = <T>(field: string, step: () => T): T | undefined => collect(faults, [field], step);
  const made = {
    demands: of("demands", () => readDemands(demands ?? [])) ?? [],
    tolerance: of("tolerance", () => readTolerance(tolerance)) ?? TWO_PER_CENT,
    wishes: of("lines", () => readWishes(lines ?? {}, dishes, kitchen)) ?? new Map<string, Wish>(),
    each: of("each", () => whole(each ?? 2, MOST_EACH)) ?? 2,
    nodes: nodes === undefined ? undefined : of("nodes", () => whole(nodes, MOST_NODES)),
  };
  const read = of("system", () => energySystem((system ?? "atwater-general") as EnergyBy));
  throwIfAny(faults);
  return { ...made, system: read?.system as EnergySystem };
}

function readTolerance(value: unknown): Fraction {
  if (value === undefined) return TWO_PER_CENT;
  const share = readShare(value as Value, "rounding-malformed");
  if (compare(share, ONE) < 0) return share;
  throw wrong(`a tolerance of ${quote(value)}`, 'give a share from 0 to below 1, or text such as "2 %"');
}

function whole(value: unknown, most: number): number {
  if (typeof value === "number" && Number.isInteger(value) && value >= 1 && value <= most) return value;
  throw wrong(`${quote(value)} is not a whole number from 1 to ${most}`, `give one from 1 to ${most}`);
}

function wrong(message: string, hint: string, path: Path = []): ReturnType<typeof fault> {
  return fault("rounding-malformed", message, hint, path);
}
