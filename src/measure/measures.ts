import { collect, type Fault, fault, quote, throwIfAny, within } from "../number/error.ts";
import { fieldsGiven } from "../number/fields.ts";
import { exact, type Fraction, toText, type Value } from "../number/fraction.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { australian } from "./data/australian.ts";
import { imperial } from "./data/imperial.ts";
import { metricSpoons } from "./data/metric-spoons.ts";
import { setSpellings } from "./data/spellings.ts";
import { usCustomary } from "./data/us-customary.ts";
import { usLabel } from "./data/us-label.ts";
import {
  type HouseholdUnit,
  householdUnits,
  type MeasureSet,
  type MeasureSetName,
  type Measures,
} from "./measure-set.ts";
import type { Unit } from "./units.ts";
import { plainWord } from "./words.ts";

export type { MeasureSet, MeasureSetName, Measures } from "./measure-set.ts";

/** The named sets, each with its source. */
export const measureSets: { readonly [N in MeasureSetName]: MeasureSet } = /* @__PURE__ */ freezeAll({
  metric: metricSpoons,
  us: usCustomary,
  "us-label": usLabel,
  imperial,
  australian,
});

export const measureSetNames: readonly MeasureSetName[] = [
  "metric",
  "us",
  "us-label",
  "imperial",
  "australian",
];

/**
 * Checks a set of spoon and cup sizes of one's own, and freezes a copy.
 *
 * Throws `measures-malformed` and `number-…` codes, all faults at once.
 *
 * @example
 * ```ts
 * const grandmother = measureSet({ name: "grandmother", ml: { cup: 200, tbsp: 15, tsp: 5 } });
 * convert(amount("1/2 cup", { measures: grandmother }), "ml").value.toString(); // => 100
 * ```
 */
export function measureSet(input: unknown): MeasureSet {
  const faults: Fault[] = [];
  const given = typeof input === "object" && input !== null ? input : {};
  const { name, ml, source } = fieldsGiven(given, ["name", "ml", "source"], "measures-malformed", faults);
  if (typeof name !== "string" || !/^\p{L}[\p{L}\p{N} '’-]{0,39}$/u.test(name)) {
    const hint = 'give it a name of up to 40 letters and digits, such as "grandmother"';
    faults.push({
      code: "measures-malformed",
      path: ["name"],
      message: `${quote(name)} cannot name a set`,
      hint,
    });
  } else if (
    Object.values(setSpellings)
      .flat()
      .some((taken) => taken === plainWord(name))
  ) {
    const hint = "choose another name, or use that set by its name";
    faults.push({
      code: "measures-malformed",
      path: ["name"],
      message: `${quote(name)} is already a set`,
      hint,
    });
  }
  const sizes = readSizes(ml, faults);
  throwIfAny(faults);
  const cited = typeof source === "string" ? { source } : {};
  const made: MeasureSet = Object.freeze({ name: String(name), ml: Object.freeze(sizes), ...cited });
  checked.add(made);
  return made;
}

/** Sets that `measureSet` made: frozen, so they need no second check. */
const checked: WeakSet<MeasureSet> = /* @__PURE__ */ new WeakSet();

function readSizes(ml: unknown, faults: Fault[]): { [U in HouseholdUnit]?: string } {
  const sizes: { [U in HouseholdUnit]?: string } = {};
  const malformed = (path: readonly string[], message: string, hint: string): void => {
    faults.push({ code: "measures-malformed", path: ["ml", ...path], message, hint });
  };
  if (typeof ml !== "object" || ml === null || Object.keys(ml).length === 0) {
    malformed([], "a set needs sizes", "give millilitres for at least one unit: { ml: { cup: 200 } }");
    return sizes;
  }
  for (const [id, size] of Object.entries(ml).slice(0, 100)) {
    const unit = householdUnits.find((known) => known === id);
    if (unit === undefined) {
      malformed(
        [id],
        `${quote(id)} is not a unit of a set`,
        didYouMean(id, householdUnits, `use ${householdUnits.join(", ")}`),
      );
      continue;
    }
    const read = collect(faults, ["ml", id], () => exact(size as Value));
    if (read && !isSpoonSized(read)) {
      const hint = "give millilitres from 0.01 to 100000, with at most 15 decimals";
      malformed([id], `a ${id} of ${quote(toText(read))} ml`, hint);
    } else if (read) sizes[unit] = toText(read);
  }
  return sizes;
}

/** From a drop's fraction to a vat, in figures of a length that keeps sums of spoons quick. */
function isSpoonSized(ml: Fraction): boolean {
  return ml.n * 100n >= ml.d && ml.n <= 100_000n * ml.d && ml.d <= 10n ** 15n;
}

/** A set with its units made, ready to read amounts by. */
export interface ReadySet {
  readonly name: string;
  readonly measures: Measures;
  readonly units: ReadonlyMap<HouseholdUnit, Unit>;
}

let named: Map<string, ReadySet> | undefined;
const own: WeakMap<MeasureSet, ReadySet> = /* @__PURE__ */ new WeakMap();

/** Throws `measures-unknown`, `measures-malformed`. */
export function readyMeasures(measures: Measures): ReadySet {
  if (typeof measures === "string") return readyNamed(measures);
  const name = measureSetNames.find((n) => measureSets[n] === measures);
  if (name) return readyNamed(name);
  const set = checked.has(measures) ? measures : within(["measures"], () => measureSet(measures));
  const known = own.get(set);
  if (known) return known;
  const made = ready(set, set);
  own.set(set, made);
  return made;
}

function readyNamed(name: string): ReadySet {
  named ??= new Map();
  const known = named.get(name);
  if (known) return known;
  const found = measureSetNames.find((n) => n === name);
  if (found === undefined) {
    const otherwise = `use ${measureSetNames.join(", ")}, or give a set of your own`;
    throw fault(
      "measures-unknown",
      `no measures are called ${quote(name)}`,
      didYouMean(name, measureSetNames, otherwise),
      ["measures"],
    );
  }
  const made = ready(measureSets[found], found);
  named.set(found, made);
  return made;
}

function ready(set: MeasureSet, measures: Measures): ReadySet {
  const units = new Map<HouseholdUnit, Unit>();
  for (const id of householdUnits) {
    const size = set.ml[id];
    if (size !== undefined) units.set(id, Object.freeze({ id, kind: "volume", size: exact(size), measures }));
  }
  return { name: set.name, measures, units };
}
