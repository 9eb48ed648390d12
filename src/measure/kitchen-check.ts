import { collect, type Fault, fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { fieldsGiven } from "../number/fields.ts";
import { compare, exact, type Fraction, isZero, ONE, toText, type Value, ZERO } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { type Amount, amount } from "./amount.ts";
import type { HouseholdUnit } from "./measure-set.ts";
import { type Measures, type ReadySet, readyMeasures } from "./measures.ts";

/** What can be measured where the food is made. */
export interface Kitchen {
  readonly name: string;
  /** Whose spoons and cups lie in the drawer. */
  readonly measures: Measures;
  /** Each spoon and cup that there is, with the parts of one that can be measured beside whole ones. */
  readonly drawer: { readonly [U in HouseholdUnit]?: readonly Value[] };
  /** The scale's step, a mass: `1 g`, `1/4 oz`. Without one nothing can be weighed. */
  readonly scale?: string;
  /** The measuring jug's step, and the least that it can measure: volumes, spoons by `measures`. */
  readonly jug?: { readonly step: string; readonly least: string };
  /** Whether pieces (eggs, onions, slices) may be halved. */
  readonly pieces: "whole" | "half";
}

/** A spoon or cup of the drawer. */
export interface DrawerMeasure {
  readonly unit: HouseholdUnit;
  readonly ml: Fraction;
  /** Parts of one, above 0 and below 1, rising. */
  readonly parts: readonly Fraction[];
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

const fields: readonly string[] = ["name", "measures", "drawer", "scale", "jug", "pieces"];

/** Checks a kitchen and reads everything in it, listing every fault. */
export function readKitchen(input: object): ReadyKitchen {
  const faults: Fault[] = [];
  const { name, measures, drawer, scale, jug, pieces } = input as { readonly [F in keyof Kitchen]?: unknown };
  const malformed: Report = (path, message, hint) => {
    faults.push({ code: "kitchen-malformed", path, message, hint });
  };
  for (const field of Object.keys(input).slice(0, 100)) {
    if (!fields.includes(field))
      malformed(
        [field],
        `${quote(field)} is not part of a kitchen`,
        didYouMean(field, fields, `use ${fields.join(", ")}`),
      );
  }
  if (typeof name !== "string" || name.trim() === "" || name.length > 200)
    malformed(["name"], `${quote(name)} cannot name a kitchen`, "give it a name");
  if (pieces !== "whole" && pieces !== "half")
    malformed(["pieces"], `pieces are ${quote(pieces)}`, 'say "whole" or "half"');
  if (measures === undefined)
    malformed(["measures"], "no measures", 'say whose spoons and cups it has: "metric", "us", …');
  const set =
    measures === undefined ? undefined : collect(faults, [], () => readyMeasures(measures as Measures));
  const spoons = set ? readDrawer(drawer, set, faults, malformed) : [];
  const step = readStep(scale, "mass", ["scale"], set, faults, malformed);
  const jugStep = readJug(jug, set, faults, malformed);
  throwIfAny(faults);
  if (!set)
    throw fault("kitchen-malformed", "a kitchen without measures", "say whose spoons and cups it has");
  const checked: Kitchen = Object.freeze({
    name: String(name),
    measures: set.measures,
    drawer: Object.freeze(
      Object.fromEntries(spoons.map((s) => [s.unit, Object.freeze(s.parts.map(({ n, d }) => `${n}/${d}`))])),
    ),
    ...(step ? { scale: String(scale) } : {}),
    ...(jugStep ? { jug: Object.freeze(markTexts(jug)) } : {}),
    pieces: pieces === "half" ? "half" : "whole",
  });
  return { kitchen: checked, set, drawer: spoons, scale: step, jug: jugStep };
}

/** More parts of one spoon or cup than any drawer has. */
const MOST_PARTS = 12;

type Report = (path: Path, message: string, hint: string) => void;

function readDrawer(
  drawer: unknown,
  set: ReadySet,
  faults: Fault[],
  malformed: Report,
): readonly DrawerMeasure[] {
  if (typeof drawer !== "object" || drawer === null || Array.isArray(drawer)) {
    malformed(
      ["drawer"],
      "no drawer",
      'list its spoons and cups: { tsp: ["1/4", "1/2"], tbsp: [] }, or {} for none',
    );
    return [];
  }
  const spoons: DrawerMeasure[] = [];
  for (const [id, parts] of Object.entries(drawer).slice(0, 100)) {
    const unit = [...set.units.values()].find((each) => each.id === id);
    if (!unit) {
      const has = [...set.units.keys()];
      malformed(
        ["drawer", id],
        `the ${set.name} measures have no ${quote(id)}`,
        didYouMean(id, has, `use ${has.join(", ")}`),
      );
      continue;
    }
    if (!Array.isArray(parts) || parts.length > MOST_PARTS) {
      malformed(
        ["drawer", id],
        `not a list of at most ${MOST_PARTS} parts`,
        'list the parts that can be measured: ["1/4", "1/2"], or [] for whole ones alone',
      );
      continue;
    }
    const read = parts.flatMap((part: unknown, i) => {
      const figure = collect(faults, ["drawer", id, i], () => exact(part as Value));
      if (figure && (compare(figure, ZERO) <= 0 || compare(figure, ONE) >= 0 || figure.d > 100n)) {
        const hint = "give parts above 0 and below 1, with a denominator of at most 100";
        malformed(["drawer", id, i], `a part of ${quote(toText(figure))}`, hint);
      }
      return figure ? [figure] : [];
    });
    spoons.push({ unit: id as HouseholdUnit, ml: unit.size, parts: read.sort(compare) });
  }
  return spoons.sort((a, b) => compare(b.ml, a.ml));
}

function markTexts(jug: unknown): NonNullable<Kitchen["jug"]> {
  const { step, least } = jug as { readonly step: unknown; readonly least: unknown };
  return { step: String(step), least: String(least) };
}

function readJug(
  jug: unknown,
  set: ReadySet | undefined,
  faults: Fault[],
  malformed: Report,
): ReadyKitchen["jug"] {
  if (jug === undefined) return undefined;
  if (typeof jug !== "object" || jug === null) {
    malformed(["jug"], `${quote(jug)} is not a jug`, 'give its marks: { step: "10 ml", least: "50 ml" }');
    return undefined;
  }
  const { step, least } = fieldsGiven(jug, ["step", "least"], "kitchen-malformed", faults, ["jug"]);
  const marks = readStep(step ?? "", "volume", ["jug", "step"], set, faults, malformed);
  const lowest = readStep(least ?? "", "volume", ["jug", "least"], set, faults, malformed);
  return marks && lowest ? { step: marks, least: lowest } : undefined;
}

function readStep(
  written: unknown,
  kind: "mass" | "volume",
  path: readonly string[],
  set: ReadySet | undefined,
  faults: Fault[],
  malformed: Report,
): Amount | undefined {
  if (written === undefined) return undefined;
  const text = typeof written === "string" ? written : "";
  const read = collect(faults, path, () => amount(text, set ? { measures: set.measures } : {}));
  if (!read) return undefined;
  if (read.kind === kind && !isZero(read.value) && read.parts === undefined) return read;
  malformed(
    path,
    `${quote(written)} is not a step`,
    `give one ${kind} above 0: ${kind === "mass" ? '"1 g"' : '"10 ml"'}`,
  );
  return undefined;
}
