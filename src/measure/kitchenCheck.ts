import { figureLeaf, type Json, meta, text, word } from "../document/leaves.ts";
import {
  andThen,
  attemptAt,
  byName,
  fields,
  list,
  once,
  optional,
  type Refuse,
  type Schema,
} from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { type Path, quote } from "../number/error.ts";
import { type Exact, exact, isZero, ONE, type Value, ZERO } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";

import { type Amount, readAmount } from "./amount.ts";
import type { HouseholdUnit, Measures } from "./measureSet.ts";
import { measures, type ReadySet } from "./measures.ts";

/** What can be measured where the food is made. */
export interface Kitchen {
  readonly name: string;
  /** Which spoons and cups lie in the drawer. */
  readonly measures: Measures;
  /** Each spoon and cup that there is, with the parts of one that can be measured beside whole ones. */
  readonly drawer: { readonly [U in HouseholdUnit]?: readonly Value[] };
  /** The scale's step, a mass: `1 g`, `1/4 oz`. Without one nothing can be weighed. */
  readonly scale?: string;
  /** The measuring jug's step, and the least that it can measure: volumes, spoons by `measures`. */
  readonly jug?: { readonly step: string; readonly least: string };
  /** Whether pieces (eggs, onions, slices) may be halved. */
  readonly pieces: "whole" | "half";
  /** An app's own data, carried along untouched. */
  readonly meta?: Json;
}

/** A spoon or cup of the drawer. */
export interface DrawerMeasure {
  readonly unit: HouseholdUnit;
  readonly ml: Exact;
  /** Parts of one, above 0 and below 1, rising. */
  readonly parts: readonly Exact[];
}

/** A kitchen with everything in it read. */
export interface ReadyKitchen {
  readonly kitchen: Kitchen;
  readonly set: ReadySet;
  /** Large to small. */
  readonly drawer: readonly DrawerMeasure[];
  readonly scale: Amount | undefined;
  readonly jug: { readonly step: Amount; readonly least: Amount } | undefined;
}

/** A kitchen as far as its fields say what they are; what they come to hangs together by the measures. */
interface KitchenParts extends Omit<Kitchen, "measures" | "drawer"> {
  readonly measures: ReadySet;
  readonly drawer: { readonly [unit: string]: readonly Exact[] };
}

/** @internal The schema of a kitchen of one's own. */
export const kitchenSchema: () => Schema<ReadyKitchen> = /* @__PURE__ */ once(() =>
  andThen(
    fields<KitchenParts>(
      {
        name: text(200),
        measures: measures(),
        drawer: byName(list(part(), { most: 12 })),
        scale: optional(text()),
        jug: optional(fields<NonNullable<Kitchen["jug"]>>({ step: text(), least: text() })),
        pieces: word(["whole", "half"]),
        meta: optional(meta()),
      },
      (_, read, refuse) => void measuring(read, refuse),
    ),
    readyKitchenOf,
  ),
);

function part(): Schema<Exact> {
  return figureLeaf(
    (given) => exact(given),
    {},
    (_, read, refuse) => {
      if (compareRatios(read, ZERO) > 0 && compareRatios(read, ONE) < 0 && read.d <= 100n) return read;
      refuse(
        `a part of ${quote(exactText(read))}`,
        "give parts above 0 and below 1, with a denominator of at most 100",
      );
      return read;
    },
  );
}

function readyKitchenOf({ measures: set, ...read }: KitchenParts, refuse: Refuse): ReadyKitchen {
  const { drawer, scale, jug } = measuring({ measures: set, ...read }, refuse);
  const kitchen: Kitchen = freezeAll({
    ...read,
    measures: set.measures,
    drawer: Object.fromEntries(drawer.map(({ unit, parts }) => [unit, parts.map(({ n, d }) => `${n}/${d}`)])),
  });
  return { kitchen, set, drawer, scale, jug };
}

/** What there is to measure with. */
function measuring(
  { measures: set, drawer, scale, jug }: Partial<KitchenParts>,
  refuse: Refuse,
): Pick<ReadyKitchen, "drawer" | "scale" | "jug"> {
  const step = (written: string, kind: "mass" | "volume", path: Path): Amount | undefined => {
    const read = attemptAt(refuse, path, () => readAmount(written, { set }));
    if (!read || (read.kind === kind && !isZero(read.value) && read.parts === undefined)) return read;
    const hint = `give one ${kind} above 0: ${kind === "mass" ? '"1 g"' : '"10 ml"'}`;
    refuse(`${quote(written)} is not a step`, hint, path);
    return undefined;
  };
  const marks = jug?.step === undefined ? undefined : step(jug.step, "volume", ["jug", "step"]);
  const lowest = jug?.least === undefined ? undefined : step(jug.least, "volume", ["jug", "least"]);
  return {
    drawer: set && drawer ? spoonsOf(set, drawer, refuse) : [],
    scale: scale === undefined ? undefined : step(scale, "mass", ["scale"]),
    jug: marks && lowest && { step: marks, least: lowest },
  };
}

function spoonsOf(set: ReadySet, drawer: KitchenParts["drawer"], refuse: Refuse): DrawerMeasure[] {
  const has = [...set.units.keys()];
  const spoons = Object.entries(drawer).flatMap(([id, parts]): DrawerMeasure[] => {
    const unit = has.find((each) => each === id);
    const size = unit && set.units.get(unit)?.size;
    if (unit && size) return [{ unit, ml: size, parts: [...(parts ?? [])].sort(compareRatios) }];
    const hint = didYouMean(id, has, `use ${has.join(", ")}`);
    refuse(`the ${set.name} measures have no ${quote(id)}`, hint, ["drawer", id]);
    return [];
  });
  return spoons.sort((a, b) => compareRatios(b.ml, a.ml));
}
