import type { EnergySystem } from "../../food/energy.ts";
import { collect, type Fault, fault, type Path, quote, throwIfAny } from "../../number/error.ts";
import { compare, exact, type Fraction, fraction, type Value } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import { compareText } from "../../number/text.ts";
import { type EnergyBy, energySystem } from "../../sheet/energy.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { askedOf } from "./brought.ts";
import { type ReadDemand, readDemands } from "./demands.ts";
import type { Range } from "./halfToDouble.ts";
import { type Dish, modelOf, type Ranges } from "./model.ts";
import type { Task } from "./task.ts";

/** Ends of a factor or of a ratio; one left out stays as usual. */
export interface FitRange {
  readonly least?: Value;
  readonly most?: Value;
}

/** Options of {@link fit}. */
export interface FitHow {
  /** Ends of the common factor: 1/10 to 10 unless told. Above 0. */
  readonly common?: FitRange;
  /**
   * Ends of what a part may be over its dish's factor: half to double unless told. Parts go by their
   * name, `sheet/part` where several sheets are fitted. A further sheet goes by its name, its ends over
   * the common factor: any, within 1/10 to 10 times its recipe, unless told. An adjustable line has its
   * ends in the recipe, as `least` and `most`.
   */
  readonly parts?: { readonly [name: string]: FitRange };
  /** Which of several sheets sets the common factor: the first by name that has held lines, unless told. */
  readonly base?: string;
  /** By which factor system shares of energy are reckoned: `atwater-general` unless told. */
  readonly system?: EnergyBy;
  /** Steps allowed to each solution; 20,000 unless told. */
  readonly pivots?: number;
  /** Changes tried for suggestions where a fit is out of reach; unless told 40, and fewer of a large fit, where each takes long. */
  readonly tries?: number;
}

const FIELDS: readonly string[] = ["common", "parts", "base", "system", "pivots", "tries"];

/** The options of a fit, read for the sheets that they speak of. */
export interface ReadHow extends Omit<Task, "dishes" | "asked"> {
  readonly system: EnergySystem;
}

/** Reads what a fit is handed, all faults at once. */
export function readTask(given: unknown, demands: unknown, how: FitHow): Task {
  const faults: Fault[] = [];
  const dishes = collect(faults, [], () => readDishes(given)) ?? [];
  const read = collect(faults, [], () => readDemands(demands)) ?? [];
  const options = collect(faults, ["how"], () => readHow(how, dishes));
  throwIfAny(faults);
  if (!options) throw wrong("the options were refused", "leave them out", ["how"]);
  return taskOf(dishes, read, options);
}

/** Gives what was read as a task to solve. */
export function taskOf(
  dishes: readonly Dish[],
  demands: readonly ReadDemand[],
  { system, ...how }: ReadHow,
): Task {
  return { ...how, dishes, asked: askedOf(dishes, demands, system) };
}

/** Reads the options of a fit, all faults at once. */
export function readHow(how: FitHow, dishes: readonly Dish[]): ReadHow {
  const faults: Fault[] = [];
  const ranges = collect(faults, [], () => readRanges(how, dishes));
  const system = collect(faults, ["system"], () => energySystem(how?.system ?? "atwater-general"));
  throwIfAny(faults);
  if (!ranges || !system) throw wrong("the options were refused", "leave them out");
  return { ranges, system: system.system, pivots: how.pivots, tries: how.tries };
}

/** Sheets as handed in: one, or several by name, in the order of their names. */
export function readDishes(given: unknown): Dish[] {
  if (given instanceof Sheet) return [{ name: undefined, sheet: given }];
  const isRecord = typeof given === "object" && given !== null && !Array.isArray(given);
  const entries: [string, unknown][] = isRecord ? Object.entries(given) : [];
  if (entries.length === 0) {
    throw wrong("there is no sheet to fit", "give a sheet, or sheets by name: { pot, shot }");
  }
  const faults: Fault[] = [];
  const dishes = entries.flatMap(([name, sheet]): Dish[] => {
    if (sheet instanceof Sheet) return [{ name, sheet }];
    collect(faults, [name], () => {
      throw wrong(
        `${quote(name)} is not a sheet`,
        "make one with sheet(recipe, foods), or open a stored one with openSheet",
      );
    });
    return [];
  });
  throwIfAny(faults);
  return dishes.sort((a, b) => compareText(a.name ?? "", b.name ?? ""));
}

function readRanges(how: unknown, dishes: readonly Dish[]): Ranges {
  if (typeof how !== "object" || how === null || Array.isArray(how))
    throw wrong("the options are not an object", "leave them out");
  const faults: Fault[] = [];
  const { common, parts, base, pivots, tries } = how as { readonly [field: string]: unknown };
  for (const field of Object.keys(how)) {
    if (FIELDS.includes(field)) continue;
    refuse(
      faults,
      [field],
      `${quote(field)} is not an option`,
      didYouMean(field, FIELDS, `use ${FIELDS.join(", ")}`),
    );
  }
  const range = collect(faults, ["common"], () => readRange(common));
  if (range?.least && range.least.n === 0n) {
    refuse(faults, ["common", "least"], "a common factor of 0 leaves nothing", "give a least above 0");
  }
  for (const [field, count, from] of [
    ["pivots", pivots, 1],
    ["tries", tries, 0],
  ] as const) {
    if (count === undefined || (Number.isInteger(count) && (count as number) >= from)) continue;
    refuse(faults, [field], `${quote(count)} ${field}`, `give a whole number of ${from} or more`);
  }
  const names = dishes.flatMap(({ name }) => name ?? []);
  if (base !== undefined && !names.some((name) => name === base)) {
    const hint =
      names.length > 0 ? didYouMean(base, names, `use one of ${names.join(", ")}`) : "leave it out";
    refuse(faults, ["base"], `no sheet is called ${quote(base)}`, hint);
  }
  const read = collect(faults, ["parts"], () =>
    readParts(parts, dishes, typeof base === "string" ? base : undefined),
  );
  throwIfAny(faults);
  return {
    common: { ...USUAL, ...range },
    parts: read ?? new Map(),
    base: typeof base === "string" ? base : undefined,
  };
}

const USUAL: Range = { least: /* @__PURE__ */ fraction(1n, 10n), most: /* @__PURE__ */ fraction(10n) };

function readParts(
  given: unknown,
  dishes: readonly Dish[],
  base: string | undefined,
): ReadonlyMap<string, Partial<Range>> {
  if (given === undefined) return new Map();
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    throw wrong("the parts' ranges are not an object", "write { sauce: { most: 3 } }");
  }
  const plain: Ranges = { common: USUAL, parts: new Map(), base };
  const known = modelOf(dishes, plain, []).movers.filter(({ kind }) => kind !== "line");
  const names = known.map(({ name }) => name);
  const faults: Fault[] = [];
  const read = new Map<string, Partial<Range>>();
  for (const [name, range] of Object.entries(given)) {
    if (!names.includes(name)) {
      const hint = didYouMean(
        name,
        names,
        "a part other than the base; an adjustable line has its own least and most",
      );
      refuse(faults, [name], `no part with a factor of its own is called ${quote(name)}`, hint);
      continue;
    }
    const ends = collect(faults, [name], () => readRange(range));
    if (ends) read.set(name, ends);
  }
  throwIfAny(faults);
  return read;
}

/** Only the ends that are given. */
function readRange(given: unknown): Partial<Range> {
  if (given === undefined) return {};
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    throw wrong("this is not a range", "write { least: 0.5, most: 2 }");
  }
  const faults: Fault[] = [];
  const { least, most, ...others } = given as { readonly [field: string]: unknown };
  for (const field of Object.keys(others)) {
    refuse(faults, [field], `${quote(field)} is not an end of a range`, "write least or most");
  }
  const read = (field: string, value: unknown): Fraction | undefined =>
    value === undefined
      ? undefined
      : collect(faults, [field], () => {
          const figure = exact(value as Value);
          if (figure.n >= 0n) return figure;
          throw wrong(`${quote(value)} is below 0`, "give 0 or more");
        });
  const ends = { least: read("least", least), most: read("most", most) };
  if (ends.most?.n === 0n) refuse(faults, ["most"], "a most of 0 leaves nothing", "give a most above 0");
  if (ends.least && ends.most && compare(ends.least, ends.most) > 0) {
    refuse(faults, ["most"], `least ${quote(least)} is above most ${quote(most)}`, "swap them");
  }
  throwIfAny(faults);
  return { ...(ends.least && { least: ends.least }), ...(ends.most && { most: ends.most }) };
}

function wrong(message: string, hint: string, path: Path = []): Error {
  return fault("fit-malformed", message, hint, path);
}

function refuse(faults: Fault[], path: Path, message: string, hint: string): void {
  faults.push({ code: "fit-malformed", path, message, hint });
}
