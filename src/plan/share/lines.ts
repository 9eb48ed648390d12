import { britishEnglish } from "../../document/language.ts";
import type { Shares } from "../../food/composition.ts";
import { exactText } from "../../number/digits.ts";
import { type Exact, equals, isZero, minus, ONE, sum, ZERO } from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import type { Line, Recipe } from "../../recipe/document.ts";
import { inSentence } from "../../sheet/names.ts";
import type { PlanLine } from "../../sheet/plan.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { foodSource, nestedSource, type Source } from "../../sheet/source.ts";
import { type Cooking, impliedYield, type Values } from "../../sheet/values.ts";
import type { LineAmounts } from "./lineFactors.ts";

/** A line as it is to stand in another sheet, and where it stood. */
interface Taken {
  readonly at: number;
  readonly line: PlanLine;
}

/**
 * A sheet of some of the lines, amounts and yield factor as they are. Its method names by name what
 * is left out, so that it is a recipe of its own.
 */
export function onlyLines(s: Sheet, lines: readonly number[]): Sheet {
  return withLines(
    s,
    lines.flatMap((at) => {
      const line = s.plan.lines[at];
      return line ? [{ at, line }] : [];
    }),
  );
}

/** The same sheet with amounts written as they were measured, where they were; they weigh the same. */
export function withLineAmounts(s: Sheet, amounts: LineAmounts | undefined): Sheet {
  if (!amounts?.some((own) => own)) return s;
  return s.version({ ...s.values, amounts: s.values.amounts.map((own, i) => amounts[i] ?? own) }, []);
}

/** The same sheet with a line that is the same for everyone added at serving, so that cooking spares it. */
export function movedToServing(s: Sheet, at: number): Sheet {
  return withLine(s, at, ({ line, source, nested, ...rest }) => {
    const { retention: _, retentionPresumed: __, yieldFactor: ___, ...kept } = line;
    const raw = line.retention === undefined ? source : uncooked(source, nested);
    return { ...rest, nested, source: raw, line: { ...kept, added: "serving" } };
  });
}

/** The same sheet with a line that was the same for everyone held to the rest of the dish. */
export function followingPot(s: Sheet, at: number): Sheet {
  return withLine(s, at, (own) => ({ ...own, line: heldLine(own.line, basePart(s)) }));
}

function heldLine(line: Line, part: string | undefined): Line {
  return { ...line, scaling: "held", ...(part !== undefined && { part }) };
}

/** The part that the dish's other lines are measured by: none, or where every held line has one the first by name. */
function basePart(s: Sheet): string | undefined {
  const held = s.plan.lines.filter(({ line }) => line.scaling === "held");
  if (held.some(({ line }) => line.part === undefined)) return undefined;
  return held.map(({ line }) => line.part ?? "").sort(compareText)[0];
}

const NO_SHARES: Shares = /* @__PURE__ */ new Map();

function uncooked(source: Source, nested: Sheet | undefined): Source {
  if (nested) return nestedSource(source.id, nested, NO_SHARES);
  return source.food ? foodSource(source.food, NO_SHARES) : source;
}

function withLine(s: Sheet, at: number, change: (line: PlanLine) => PlanLine): Sheet {
  return withLines(
    s,
    s.plan.lines.map((line, i) => ({ at: i, line: i === at ? change(line) : line })),
  );
}

function withLines(s: Sheet, taken: readonly Taken[]): Sheet {
  const amounts = taken.flatMap(({ at }) => s.values.amounts[at] ?? []);
  const grams = taken.map(({ at }) => s.values.grams[at] ?? ZERO);
  const cooked = grams.filter((_, i) => taken[i]?.line.line.added === "cooking");
  const cooking = cookingOf(s, sum(cooked));
  const values: Values = { amounts, grams, portions: s.values.portions, cooking };
  const lines = taken.map(({ line }) => line);
  return new Sheet(s.plan.withLines(lines, recipeOf(s, lines, cooking)), values);
}

/** The yield factor stays; a mass that was weighed is of all that was cooked, and presumed of some of it. */
function cookingOf({ values, masses }: Sheet, raw: Exact): Cooking {
  if (values.cooking.by !== "mass" || equals(raw, minus(masses.pot, masses.change))) return values.cooking;
  return isZero(raw) ? { by: "factor", factor: ONE } : impliedYield(values.cooking, masses);
}

function recipeOf(s: Sheet, lines: readonly PlanLine[], cooking: Cooking): Recipe {
  const { cookedMass: _, yieldFactor, yieldPresumed: __, method, ...rest } = s.origin;
  const kept = new Set(lines.map(({ line }) => line.key));
  const names = new Map(s.plan.lines.map(({ line, source }) => [line.key, source.name]));
  const named = (step: string): string =>
    step.replace(/\{([^{}]+)\}/g, (whole, key: string) =>
      kept.has(key) ? whole : inSentence(names.get(key) ?? key, britishEnglish).replace(/[{}]/g, ""),
    );
  return {
    ...rest,
    portions: exactText(s.values.portions),
    ...(method && { method: method.map(named) }),
    ...(cooking.by === "mass" && { cookedMass: `${exactText(cooking.mass)} g` }),
    ...(cooking.by === "factor" && yieldFactor !== undefined && { yieldFactor }),
    ...(cooking.by === "factor" &&
      cooking.presumed && { yieldFactor: exactText(cooking.factor), yieldPresumed: true }),
  };
}
