import { count } from "../../document/leaves.ts";
import { readFar, readInto } from "../../document/read.ts";
import { fields, once, optional, type Schema } from "../../document/schema.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { kitchen as readKitchen } from "../../measure/kitchen.ts";
import { TWO_PER_CENT, tolerance } from "../../measure/tolerance.ts";
import { collect, type Fault, fault, throwIfAny } from "../../number/error.ts";
import type { Exact, Value } from "../../number/exact.ts";
import { type EnergyBy, energyBy, energySystem, type NamedSystem } from "../../sheet/energy.ts";
import type { Demand } from "../demand.ts";
import { type AskedDemand, askedOf } from "../engine/brought.ts";
import type { Dish } from "../engine/model.ts";
import type { ReadDemand } from "../engine/readDemand.ts";
import { demandsSchema } from "../fit/demands.ts";
import { sheetsSchema } from "../fit/read.ts";
import { readWishes, type Wish, wishesSchema } from "./wish.ts";

/** Options of {@link roundToKitchen}. */
export interface RoundOptions {
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
  readonly asked: readonly AskedDemand[];
  readonly tolerance: Exact;
  /** By line name. */
  readonly wishes: ReadonlyMap<string, Wish>;
  readonly each: number;
  readonly nodes: number | undefined;
}

const MOST_EACH = 6;
const MOST_NODES = 1_000_000_000;

/** Reads all that a rounding is handed. Throws every fault at once. */
export function readRounding(given: unknown, place: unknown, how: unknown): RoundTask {
  const faults: Fault[] = [];
  const dishes = readInto(faults, sheetsSchema(), given, "fit-malformed") ?? [];
  const kitchen = collect(faults, ["kitchen"], () => readKitchen(place));
  const {
    demands = [],
    system = energySystem("atwater-general"),
    tolerance = TWO_PER_CENT,
    lines = {},
    each = 2,
    nodes,
  } = readFar(faults, roundHow(), how, "rounding-malformed", ["how"]) ?? {};
  const wishes = collect(faults, ["how", "lines"], () => readWishes(lines, dishes, kitchen));
  throwIfAny(faults);
  if (!kitchen || !wishes)
    throw fault("rounding-malformed", "nothing was read", "give a sheet and a kitchen");
  return { dishes, kitchen, asked: askedOf(dishes, demands, system.system), tolerance, wishes, each, nodes };
}

interface ReadOptions {
  readonly demands?: readonly ReadDemand[];
  readonly tolerance?: Exact;
  readonly lines?: Readonly<Record<string, string>>;
  readonly each?: number;
  readonly system?: NamedSystem;
  readonly nodes?: number;
}

const roundHow: () => Schema<ReadOptions> = /* @__PURE__ */ once(() =>
  fields<ReadOptions>({
    demands: optional(demandsSchema()),
    tolerance: optional(tolerance()),
    lines: optional(wishesSchema()),
    each: optional(count(1, MOST_EACH)),
    system: optional(energyBy()),
    nodes: optional(count(1, MOST_NODES)),
  }),
);
