import type { EnergySystem } from "../../food/energy.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { collect, type Fault, fault, quote, throwIfAny } from "../../number/error.ts";
import { compare, type Fraction, ONE, type Value } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import { type EnergyBy, energySystem } from "../../sheet/energy.ts";
import type { Demand } from "../demand.ts";
import { type ReadDemand, readDemands } from "../fit/demands.ts";
import { type Dish, nameIn } from "../fit/model.ts";
import { readDishes } from "../fit/read.ts";
import { readShare } from "../fit/share.ts";

/** Options of {@link roundToKitchen}. */
export interface RoundHow {
  /** What a portion must still meet. Firm ones are limits; the others may be off by the tolerance. */
  readonly demands?: readonly Demand[];
  /** How far a target may be off, as a share of it: 2 % unless told. */
  readonly tolerance?: Value;
  /** Wishes by line (`sheet/line` where several are rounded): `weigh`, `as-written`, or a unit such as `tbsp`. */
  readonly lines?: Readonly<Record<string, string>>;
  /** Amounts tried on each side of a line's exact one, 1 to 6; 2 unless told. */
  readonly each?: number;
  /** By which factor system shares of energy are reckoned: `atwater-general` unless told. */
  readonly system?: EnergyBy;
  /** Choices looked at before the search stops: 2,000,000 unless told. */
  readonly nodes?: number;
}

/** What a rounding is handed, read. */
export interface RoundTask {
  readonly dishes: readonly Dish[];
  readonly kitchen: Kitchen | string;
  readonly demands: readonly ReadDemand[];
  readonly tolerance: Fraction;
  readonly wishes: ReadonlyMap<string, string>;
  readonly each: number;
  readonly system: EnergySystem;
  readonly nodes: number | undefined;
}

const FIELDS: readonly string[] = ["demands", "tolerance", "lines", "each", "system", "nodes"];
const TWO_PER_CENT: Fraction = { n: 1n, d: 50n };

/** Reads all that a rounding is handed. Throws every fault at once. */
export function readRounding(given: unknown, kitchen: Kitchen | string, how: RoundHow): RoundTask {
  if (typeof how !== "object" || how === null) throw wrong("the options are not an object", "leave them out");
  const faults: Fault[] = [];
  for (const field of Object.keys(how)) {
    if (FIELDS.includes(field)) continue;
    const hint = didYouMean(field, FIELDS, `use ${FIELDS.join(", ")}`);
    collect(faults, [field], () => {
      throw wrong(`${quote(field)} is not an option`, hint);
    });
  }
  const dishes = collect(faults, [], () => readDishes(given)) ?? [];
  const demands = collect(faults, ["demands"], () => readDemands(how.demands ?? [])) ?? [];
  const tolerance = collect(faults, ["tolerance"], () => readTolerance(how.tolerance)) ?? TWO_PER_CENT;
  const system = collect(faults, ["system"], () => energySystem(how.system ?? "atwater-general"));
  const wishes = collect(faults, ["lines"], () => readWishes(how.lines ?? {}, dishes)) ?? new Map();
  const each = collect(faults, ["each"], () => whole(how.each ?? 2, 1, 6)) ?? 2;
  if (how.nodes !== undefined) collect(faults, ["nodes"], () => whole(how.nodes, 1, 1_000_000_000));
  throwIfAny(faults);
  if (!system) throw wrong("no such factor system", "leave it out");
  return { dishes, kitchen, demands, tolerance, wishes, each, system: system.system, nodes: how.nodes };
}

function readTolerance(value: Value | undefined): Fraction {
  if (value === undefined) return TWO_PER_CENT;
  const share = readShare(value, "rounding-malformed");
  if (share.n >= 0n && compare(share, ONE) < 0) return share;
  throw wrong(`a tolerance of ${quote(value)}`, 'give a share from 0 to below 1, or text such as "2 %"');
}

function readWishes(lines: unknown, dishes: readonly Dish[]): ReadonlyMap<string, string> {
  if (typeof lines !== "object" || lines === null)
    throw wrong("the wishes are not an object", "give them by line key");
  const known = dishes.flatMap((dish) => dish.sheet.plan.lines.map(({ line }) => nameIn(dish, line.key)));
  const faults: Fault[] = [];
  const wishes = new Map<string, string>();
  for (const [key, wish] of Object.entries(lines)) {
    collect(faults, [key], () => {
      if (!known.includes(key)) {
        throw fault(
          "line-unknown",
          `there is no line ${quote(key)}`,
          didYouMean(key, known, "use a line's key"),
        );
      }
      if (typeof wish !== "string" || wish.trim() === "")
        throw wrong("no wish", 'write "weigh", "as-written" or a unit');
      wishes.set(key, wish);
    });
  }
  throwIfAny(faults);
  return wishes;
}

function whole(value: unknown, from: number, to: number): number {
  if (Number.isInteger(value) && (value as number) >= from && (value as number) <= to) return value as number;
  throw wrong(
    `${quote(value)} is not a whole number from ${from} to ${to}`,
    `give one from ${from} to ${to}`,
  );
}

function wrong(message: string, hint: string): Error {
  return fault("rounding-malformed", message, hint);
}
