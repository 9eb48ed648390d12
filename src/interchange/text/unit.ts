import { fixedUnit } from "../../measure/units.ts";
import { spelled } from "../../measure/unitText.ts";
import { countUnits, sizes } from "../data/words.ts";

/** A unit at the beginning of a text: what it measures, and what follows it. */
export interface UnitFound {
  readonly unit: string;
  readonly kind: "mass" | "volume" | "length" | "count" | "size";
  readonly rest: string;
  readonly isPlural: boolean;
}

/** Whose cup a word before it says. */
const WHOSE = /^ ?(metric|us|american|imperial|uk|british|australian)(?= )/i;
const LEVELS =
  /^ ?(?:heaped|heaping|level|rounded|generous|scant|good|full|packed|tightly packed|lightly packed|leveled|levelled)(?= )/i;
const WORD = /^ ?-? ?([\p{L}µ]+\.?(?:-[\p{L}]+)?)/u;
const TWO_WORDS = /^ ?-? ?([\p{L}]+\.? [\p{L}]+\.?)(?![\p{L}])/u;

/** Reads a unit at the beginning of what follows a number. */
export function leadingUnit(text: string): UnitFound | undefined {
  const whose = WHOSE.exec(text);
  if (whose) {
    const found = readPlain(text.slice(whose[0].length));
    if (found?.kind === "volume")
      return { ...found, unit: `${(whose[1] ?? "").toLowerCase()} ${found.unit}` };
  }
  const level = LEVELS.exec(text);
  const found = readPlain(level ? text.slice(level[0].length) : text);
  return level && found?.kind !== "volume" && found?.kind !== "count" ? readPlain(text) : found;
}

function readPlain(text: string): UnitFound | undefined {
  for (const pattern of [TWO_WORDS, WORD]) {
    const match = pattern.exec(text);
    const word = match?.[1];
    if (match === null || word === undefined) continue;
    const found = unitOf(word);
    // 180C is a temperature.
    if (found && !(/^c$/i.test(word) && !text.startsWith(" "))) {
      const after = text.slice(match[0].length);
      // A full stop belongs to an abbreviation.
      return { ...found, rest: after.replace(/^\.(?= |$)/, "") };
    }
  }
  return undefined;
}

function unitOf(written: string): Omit<UnitFound, "rest"> | undefined {
  const word = written.replace(/\.(?= |$)/g, "");
  if (word === "T") return { unit: "tbsp", kind: "volume", isPlural: false };
  if (word === "t") return { unit: "tsp", kind: "volume", isPlural: false };
  const lower = word.toLowerCase();
  const isPlural = lower.endsWith("s") && lower.length > 2;
  const size = sizes.get(lower);
  if (size !== undefined) return { unit: size, kind: "size", isPlural: false };
  const count = countUnits.get(lower);
  if (count !== undefined) return { unit: count, kind: "count", isPlural: isPlural && count !== lower };
  // "in" and "m" are more often words, and nobody cooks by the stone or the joule.
  if (NO_UNITS.has(lower)) return undefined;
  const id = spelled(lower) ?? spelled(SPLIT.get(lower) ?? "");
  if (id === undefined) return undefined;
  const fixed = fixedUnit(id);
  if (fixed && fixed.kind !== "mass" && fixed.kind !== "volume" && fixed.kind !== "length") return undefined;
  const kind = fixed ? (fixed.kind as "mass" | "volume" | "length") : "volume";
  return { unit: id, kind, isPlural };
}

const NO_UNITS: ReadonlySet<string> = new Set([
  "in",
  "m",
  "st",
  "stone",
  "stones",
  "j",
  "ft",
  "foot",
  "feet",
  "c3",
]);
const SPLIT: ReadonlyMap<string, string> = new Map([
  ["table spoon", "tbsp"],
  ["table spoons", "tbsp"],
  ["tea spoon", "tsp"],
  ["tea spoons", "tsp"],
  ["tbspn", "tbsp"],
  ["tspn", "tsp"],
  ["kilogramm", "kg"],
  ["gr", "g"],
  ["grs", "g"],
  ["gramm", "g"],
  ["ltr", "l"],
  ["lt", "l"],
  ["mil", "ml"],
]);
