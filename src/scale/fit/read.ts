import { anyText, count, number, thing } from "../../document/leaves.ts";
import { readFar, readInto } from "../../document/read.ts";
import { isRecord } from "../../document/safe.ts";
import { andThen, byName, choice, fields, once, optional, type Schema } from "../../document/schema.ts";
import type { EnergySystem } from "../../food/energy.ts";
import { collect, type Fault, type Path, quote, throwIfAny } from "../../number/error.ts";
import { fraction, type Value } from "../../number/exact.ts";
import { didYouMean } from "../../number/near.ts";
import { compareRatios } from "../../number/ratio.ts";
import { compareText } from "../../number/text.ts";
import { type EnergyBy, energyBy, energySystem, type NamedSystem } from "../../sheet/energy.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { askedOf } from "../engine/brought.ts";
import type { FactorRange } from "../engine/halfToDouble.ts";
import { type Dish, modelOf, type Ranges } from "../engine/model.ts";
import type { ReadDemand } from "../engine/readDemand.ts";
import type { Task } from "../engine/task.ts";
import { demandsSchema } from "./demands.ts";

/** Ends of a factor or of a ratio; one left out stays as usual. */
export interface FitRange {
  readonly least?: Value;
  readonly most?: Value;
}

/** Options of {@link fit}. */
export interface FitOptions {
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

/** The options of a fit, read for the sheets that they speak of. */
export interface FitAsRead extends Omit<Task, "dishes" | "asked"> {
  readonly system: EnergySystem;
}

/** Reads what a fit is handed, all faults at once. */
export function readTask(given: unknown, asked: unknown, told: FitOptions): Task {
  const faults: Fault[] = [];
  const dishes = readInto(faults, sheetsSchema(), given, "fit-malformed") ?? [];
  const demands = readInto(faults, demandsSchema(), asked, "demand-malformed") ?? [];
  const read = readFar(faults, fitHow(), told, "fit-malformed", ["how"]) ?? {};
  const how = collect(faults, ["how"], () => howFor(dishes, read));
  throwIfAny(faults);
  return taskOf(dishes, demands, how as FitAsRead);
}

/** Gives what was read as a task to solve. */
export function taskOf(
  dishes: readonly Dish[],
  demands: readonly ReadDemand[],
  { system, ...how }: FitAsRead,
): Task {
  return { ...how, dishes, asked: askedOf(dishes, demands, system) };
}

/** The options of a fit for these sheets. Throws `fit-malformed` where they name what is not there. */
export function howFor(dishes: readonly Dish[], read: FitFields): FitAsRead {
  const faults: Fault[] = [];
  const ranges = rangesOf(read, dishes, (path, message, hint) => {
    faults.push({ code: "fit-malformed", path, message, hint });
  });
  throwIfAny(faults);
  const { system } = read.system ?? energySystem("atwater-general");
  return { ranges, system, pivots: read.pivots, tries: read.tries };
}

/** The schema of sheets as handed in: one, or several by name; read in the order of their names. */
export const sheetsSchema: () => Schema<readonly Dish[]> = /* @__PURE__ */ once(() => {
  const one = thing("a sheet", isSheet);
  const alone = andThen(one, (sheet): readonly Dish[] => [{ name: undefined, sheet }]);
  const several = andThen(byName(one), (sheets, refuse): readonly Dish[] => {
    const dishes = Object.entries(sheets).map(([name, sheet]) => ({ name, sheet }));
    if (dishes.length === 0) refuse("there is no sheet", `give ${SHEETS}`);
    return dishes.sort((a, b) => compareText(a.name, b.name));
  });
  const pick = (given: unknown) => (isSheet(given) ? alone : isRecord(given) ? several : undefined);
  return choice([alone, several], pick, SHEETS);
});

const SHEETS = "a sheet, or sheets by name: { pot, shot }";

function isSheet(given: unknown): given is Sheet {
  return given instanceof Sheet;
}

/** Options of a fit as they are read, before the sheets are known. */
export interface FitFields {
  readonly common?: Partial<FactorRange>;
  readonly parts?: { readonly [name: string]: Partial<FactorRange> };
  readonly base?: string;
  readonly system?: NamedSystem;
  readonly pivots?: number;
  readonly tries?: number;
}

/** The schema of the options of a fit. */
export const fitHow: () => Schema<FitFields> = /* @__PURE__ */ once(() =>
  fields<FitFields>({
    common: optional(
      andThen(range(), (read, refuse) => {
        if (read.least?.n === 0n)
          refuse("a common factor of 0 leaves nothing", "give a least above 0", ["least"]);
        return read;
      }),
    ),
    parts: optional(byName(range(), { like: "{ sauce: { most: 3 } }" })),
    base: optional(anyText()),
    system: optional(energyBy()),
    pivots: optional(count(1)),
    tries: optional(count(0)),
  }),
);

/** Only the ends that are given. */
function range(): Schema<Partial<FactorRange>> {
  return andThen(
    fields<Partial<FactorRange>>({
      least: optional(number({ from: 0 })),
      most: optional(number({ from: 0 })),
    }),
    ({ least, most }, refuse) => {
      if (most?.n === 0n) refuse("a most of 0 leaves nothing", "give a most above 0", ["most"]);
      if (least && most && compareRatios(least, most) > 0)
        refuse(`least ${quote(least)} is above most ${quote(most)}`, "swap them", ["most"]);
      return { ...(least && { least }), ...(most && { most }) };
    },
  );
}

/** The ranges of a fit; what they name has to be there. */
function rangesOf(
  { common, parts = {}, base }: FitFields,
  dishes: readonly Dish[],
  refuse: (path: Path, message: string, hint: string) => void,
): Ranges {
  const names = dishes.flatMap(({ name }) => name ?? []);
  if (base !== undefined && !names.includes(base)) {
    const hint =
      names.length > 0 ? didYouMean(base, names, `use one of ${names.join(", ")}`) : "leave it out";
    refuse(["base"], `no sheet is called ${quote(base)}`, hint);
  }
  const plain: Ranges = { common: { ...USUAL, ...common }, parts: new Map(), base };
  const told = Object.entries(parts);
  if (told.length === 0) return plain;
  const movers = modelOf(dishes, plain, []).movers.filter(({ kind }) => kind !== "line");
  const known = movers.map(({ name }) => name);
  for (const [name] of told) {
    if (known.includes(name)) continue;
    const otherwise = "a part other than the base; an adjustable line has its own least and most";
    const hint = didYouMean(name, known, otherwise);
    refuse(["parts", name], `no part with a factor of its own is called ${quote(name)}`, hint);
  }
  return { ...plain, parts: new Map(told) };
}

const USUAL: FactorRange = { least: /* @__PURE__ */ fraction(1n, 10n), most: /* @__PURE__ */ fraction(10n) };
