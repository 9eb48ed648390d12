import { exactText, fixedText } from "../number/digits.ts";
import { fault, quote, type SteelyardError } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { nearNames } from "../number/near.ts";
import { compareRatios, magnitude } from "../number/ratio.ts";
import { trimZeros } from "./clean.ts";
import { ambiguous, setSpellings, sizeless, spellings, unlevel } from "./data/spellings.ts";
import { type HouseholdUnit, householdUnits } from "./measureSet.ts";
import { measureSetNames, type ReadySet, readyMeasures } from "./measures.ts";
import { noSize, rangeFault } from "./numberText.ts";
import { fixedUnit, type Unit } from "./units.ts";
import { plainWord, type UnitWords, unitInWords } from "./words.ts";

/** By what a unit is read. */
export interface UnitContext {
  readonly set?: ReadySet | undefined;
  readonly words?: UnitWords | undefined;
  /** A food's own measures, for hints. */
  readonly own?: readonly string[] | undefined;
}

/**
 * Reads a unit.
 *
 * Throws `amount-ambiguous`, `amount-no-size`, `amount-range`, `amount-unknown-unit`,
 * `measures-needed`.
 */
export function readUnit(text: string, context: UnitContext): Unit {
  const symbol = text.trim();
  if (RANGED.test(symbol)) throw rangeFault(symbol);
  const plain = plainWord(symbol);
  const worded = context.words ? unitInWords(symbol, context.words) : undefined;
  if (worded === undefined) refuseAmbiguous(symbol, plain);
  const id = worded ?? (symbol === "MJ" ? "MJ" : spelled(plain));
  if (id !== undefined) return sized(id, context.set) ?? unknown(symbol, context);
  const prefixed = withSet(plain, context);
  if (prefixed) return prefixed;
  if (plain.startsWith("level ")) return readUnit(plain.slice("level ".length), context);
  return unknown(symbol, context);
}

let index: ReadonlyMap<string, string> | undefined;

/** The canonical name of a unit from any of its spellings, plainly written. */
export function spelled(plain: string): string | undefined {
  index ??= new Map(
    Object.entries(spellings).flatMap(([id, all]) => all.map((spelling): [string, string] => [spelling, id])),
  );
  return index.get(plain);
}

function refuseAmbiguous(symbol: string, plain: string): void {
  const exactCase = symbol.replace(/\.$/, "");
  const readings = Object.hasOwn(ambiguous.exact, exactCase)
    ? ambiguous.exact[exactCase]
    : Object.hasOwn(ambiguous.any, plain)
      ? ambiguous.any[plain]
      : undefined;
  if (readings) throw fault("amount-ambiguous", `${quote(symbol)} could be ${readings[0]}`, readings[1]);
}

function sized(id: string, set: ReadySet | undefined): Unit | undefined {
  const fixed = fixedUnit(id);
  if (fixed) return fixed;
  const household = householdUnits.find((unit) => unit === id);
  if (household === undefined) return undefined;
  const found = set?.units.get(household);
  if (!found) throw measuresNeeded(household, set);
  return found;
}

/** A unit with its set before it: "us cup", "imperial pint". */
function withSet(plain: string, context: UnitContext): Unit | undefined {
  for (const [spelling, set] of setNames(context)) {
    if (!plain.startsWith(`${spelling} `)) continue;
    const rest = plain.slice(spelling.length + 1);
    const id = (context.words ? unitInWords(rest, context.words) : undefined) ?? spelled(rest);
    const household = householdUnits.find((unit) => unit === id);
    if (household !== undefined) return sized(household, set());
  }
  return undefined;
}

function* setNames(context: UnitContext): Generator<readonly [string, () => ReadySet | undefined]> {
  const { set, words } = context;
  if (set) yield [plainWord(set.name), () => set];
  for (const name of measureSetNames) {
    for (const spelling of setSpellings[name]) yield [spelling, () => readyMeasures(name)];
    const word = words?.sets?.[name];
    if (word !== undefined) yield [plainWord(word), () => readyMeasures(name)];
  }
}

function measuresNeeded(unit: HouseholdUnit, set: ReadySet | undefined): SteelyardError {
  const sizes = new Map<string, { size: Exact; names: string[] }>();
  for (const name of measureSetNames) {
    const size = readyMeasures(name).units.get(unit)?.size;
    if (!size) continue;
    const known = sizes.get(exactText(size));
    if (known) known.names.push(name);
    else sizes.set(exactText(size), { size, names: [name] });
  }
  const listed = [...sizes.values()]
    .sort((a, b) => compareRatios(a.size, b.size))
    .map(({ size, names }) => `${shortMl(size)} ml (${names.join(", ")})`);
  const message = set
    ? `the ${set.name} measures have no ${unit}; one is ${listed.join(", ")}`
    : `a ${unit} is ${listed.join(", ")}: it has to be said which`;
  const first = [...sizes.values()][0]?.names[0] ?? "us";
  const hint = `say whose, as in "${first.replace("-", " ")} ${unit}", or give the measures: { measures: "${first}" }`;
  return fault("measures-needed", message, hint);
}

function shortMl(size: Exact): string {
  return trimZeros(fixedText(size, Math.max(0, 3 - magnitude(size))));
}

const RANGED = /[-–—‒~…] ?[.\d]|(?:^| )(?:to|or) [.\d]|\.\.|(?:[-–—‒~…]|(?:^| )(?:to|or))$/i;

function unknown(symbol: string, context: UnitContext): never {
  const plain = plainWord(symbol);
  if (sizeless.some((word) => plain === word || plain.startsWith(`${word} `))) throw noSize(symbol);
  const loose = unlevel.find((word) => plain.startsWith(`${word} `));
  if (loose !== undefined && spelled(plain.slice(loose.length + 1)) !== undefined) throw noSize(symbol);
  throw fault(
    "amount-unknown-unit",
    `${quote(symbol)} is not a known unit`,
    unitHint(plain, context.own ?? []),
  );
}

/** International units of vitamins, which are no units of weight; no full stops are left in plain text. */
const INTERNATIONAL = /^i\.? ?[ue]\.?$/;

function unitHint(plain: string, own: readonly string[]): string {
  if (INTERNATIONAL.test(plain))
    return "give µg: an international unit weighs something else for each vitamin (vitaminDFromIu reckons it for vitamin D)";
  const alone = leadingUnit(plain);
  if (alone !== undefined)
    return `write the unit alone: "${alone}", and the rest as the food or its preparation`;
  const near = nearNames(plain, new Set([...own, ...spellingsOfFood()])).filter(
    // Every letter is near every other: a short word is near only what begins alike.
    (name) => name.length > 1 && (plain.length > 3 || name[0] === plain[0]),
  );
  if (near.length > 0) return `did you mean ${near.map((name) => quote(name, 40)).join(" or ")}?`;
  if (own.length === 0)
    return "write grams, millilitres, spoons or cups, or give the food a measure of that name";
  return `this food has ${own
    .slice(0, 12)
    .map((name) => quote(name, 40))
    .join(", ")}; or write grams`;
}

/** Spellings of all units but lengths, by which no food is measured unless it says so. */
function spellingsOfFood(): readonly string[] {
  return Object.entries(spellings).flatMap(([id, all]) => (isLength(id) ? [] : all));
}

function isLength(id: string): boolean {
  return fixedUnit(id)?.kind === "length";
}

/** The unit that a longer phrase begins with: `tbsp` of "tbsp olive oil". */
function leadingUnit(plain: string): string | undefined {
  const words = plain.split(/[ ,(]+/).slice(0, 3);
  for (let n = words.length; n > 0; n--) {
    const id = spelled(words.slice(0, n).join(" "));
    if (id !== undefined && !isLength(id)) return id;
  }
  return undefined;
}
