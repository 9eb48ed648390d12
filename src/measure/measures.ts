import { figureLeaf, text, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import {
  andThen,
  byName,
  choice,
  fields,
  once,
  optional,
  type Refuse,
  readAs,
  type Schema,
} from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { fault, kindOf, quote } from "../number/error.ts";
import { exact } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { australian } from "./data/australian.ts";
import { imperial } from "./data/imperial.ts";
import { metricSpoons } from "./data/metricSpoons.ts";
import { setSpellings } from "./data/spellings.ts";
import { usCustomary } from "./data/usCustomary.ts";
import { usLabel } from "./data/usLabel.ts";
import {
  type HouseholdUnit,
  householdUnits,
  type MeasureSet,
  type MeasureSetName,
  type Measures,
} from "./measureSet.ts";
import type { Unit } from "./units.ts";
import { plainWord } from "./words.ts";

export type { MeasureSet, MeasureSetName, Measures } from "./measureSet.ts";

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
  return freezeSet(read(measureSetSchema(), input, "measures-malformed"));
}

/** @internal The schema of a set of one's own. */
export const measureSetSchema: () => Schema<MeasureSet> = /* @__PURE__ */ once(() =>
  fields<MeasureSet>({
    name: text(40, (name, refuse) => {
      if (!/^\p{L}[\p{L}\p{N} '’-]*$/u.test(name)) {
        const hint = 'give it a name of up to 40 letters and digits, such as "grandmother"';
        refuse(`${quote(name)} cannot name a set`, hint);
      } else if (
        Object.values(setSpellings).some((all) => (all as readonly string[]).includes(plainWord(name)))
      )
        refuse(`${quote(name)} is already a set`, "choose another name, or use that set by its name");
    }),
    ml: andThen(byName(spoonSize(), { check: unitOfSet, names: householdUnits }), (sizes, refuse) => {
      if (Object.keys(sizes).length === 0)
        refuse("a set needs sizes", "give millilitres for at least one unit: { ml: { cup: 200 } }");
      return sizes;
    }),
    source: optional(text()),
  }),
);

function unitOfSet(id: string, refuse: Refuse): void {
  if (householdUnits.some((unit) => unit === id)) return;
  const hint = didYouMean(id, householdUnits, `use ${householdUnits.join(", ")}`);
  refuse(`${quote(id)} is not a unit of a set`, hint);
}

/** From a drop's fraction to a vat, in figures of a length that keeps sums of spoons quick. */
function spoonSize(): Schema<string> {
  return figureLeaf(
    (size) => exact(size),
    {},
    (_, size, refuse) => {
      const isSpoonSized = size.n * 100n >= size.d && size.n <= 100_000n * size.d && size.d <= 10n ** 15n;
      if (!isSpoonSized)
        refuse(
          `one of ${quote(exactText(size))} ml`,
          "give millilitres from 0.01 to 100000, with at most 15 decimals",
        );
      return exactText(size);
    },
  );
}

function freezeSet(set: MeasureSet): MeasureSet {
  const made = freezeAll(set);
  checked.add(made);
  return made;
}

/** Sets that `measureSet` made: frozen, so they need no second check. */
const checked: WeakSet<MeasureSet> = /* @__PURE__ */ new WeakSet();

/** A set with its units made, ready to read amounts by. */
export interface ReadySet {
  readonly name: string;
  readonly measures: Measures;
  readonly units: ReadonlyMap<HouseholdUnit, Unit>;
}

let named: Map<string, ReadySet> | undefined;
const own: WeakMap<MeasureSet, ReadySet> = /* @__PURE__ */ new WeakMap();

/** @internal A set by name or of one's own, read. */
export const measures: () => Schema<ReadySet> = /* @__PURE__ */ once(() =>
  readAs(
    choice<unknown>([word(measureSetNames), measureSetSchema()], () => undefined, ""),
    "the name of a set of measures, or a set of your own",
    readyMeasures,
  ),
);

/** Throws `measures-unknown`, `measures-malformed`. */
export function readyMeasures(given: unknown): ReadySet {
  if (typeof given === "string") return readyNamed(given);
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    const hint = `use ${measureSetNames.join(", ")}, or give a set of your own`;
    throw fault("measures-malformed", `${kindOf(given)} is no set of measures`, hint);
  }
  const name = measureSetNames.find((n) => measureSets[n] === given);
  if (name) return readyNamed(name);
  const set = checked.has(given as MeasureSet) ? (given as MeasureSet) : measureSet(given);
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
  if (found === undefined)
    throw fault("measures-unknown", `no measures are called ${quote(name)}`, meant(name));
  const made = ready(measureSets[found], found);
  named.set(found, made);
  return made;
}

/** The set that a name is another word for, or is like. */
function meant(name: string): string {
  const plain = plainWord(name);
  const other = measureSetNames.find((set) => (setSpellings[set] as readonly string[]).includes(plain));
  const otherwise = `use ${measureSetNames.join(", ")}, or give a set of your own`;
  return didYouMean(other ?? name, measureSetNames, otherwise);
}

function ready(set: MeasureSet, measures: Measures): ReadySet {
  const units = new Map<HouseholdUnit, Unit>();
  for (const id of householdUnits) {
    const size = set.ml[id];
    if (size !== undefined) units.set(id, Object.freeze({ id, kind: "volume", size: exact(size), measures }));
  }
  return { name: set.name, measures, units };
}
