import { type Exact, isZero, ZERO } from "../number/exact.ts";
import { onlyLines } from "../plan/share/lines.ts";
import type { PlanLine } from "../sheet/plan.ts";
import { Sheet } from "../sheet/sheet.ts";
import { nestedSource } from "../sheet/source.ts";

/** What a line takes of a nested recipe. */
export interface Drawn {
  /** The line's place in its sheet. */
  readonly line: number;
  readonly key: string;
  readonly id: string;
  readonly nested: Sheet;
  /** As eaten. */
  readonly grams: Exact;
}

/** Lists what a sheet takes of nested recipes; nothing of lines that weigh nothing. */
export function drawnBy({ plan, values }: Sheet): readonly Drawn[] {
  return plan.lines.flatMap(({ line, source, nested }, i): Drawn[] => {
    const grams = values.grams[i] ?? ZERO;
    return nested && !isZero(grams) ? [{ line: i, key: line.key, id: source.id, nested, grams }] : [];
  });
}

/** Tells whether any line of a sheet names a nested recipe. */
export function hasNested({ plan }: Sheet): boolean {
  return plan.lines.some(({ nested }) => nested);
}

/** A sheet's foods alone, for whoever buys them beside the batches that it draws on; undefined where it has none. */
export function ownFoods(s: Sheet): Sheet | undefined {
  const lines = s.plan.lines.flatMap(({ nested }, i) => (nested ? [] : [i]));
  if (lines.length === s.plan.lines.length) return s;
  return lines.length === 0 ? undefined : onlyLines(s, lines);
}

/** The same sheet with nested recipes as they were made; `made` gives undefined for one that is as written. */
export function drawingOn(s: Sheet, made: (line: PlanLine) => Sheet | undefined): Sheet {
  let isChanged = false;
  const lines = s.plan.lines.map((own): PlanLine => {
    const batch = own.nested && made(own);
    if (!batch) return own;
    isChanged = true;
    return { ...own, nested: batch, source: nestedSource(own.source.id, batch, own.source.left) };
  });
  return isChanged ? new Sheet(s.plan.withLines(lines), s.values) : s;
}

/** Tells nested recipes apart: two that are written alike, of the same foods, are made as one. */
export class RecipeKeys {
  readonly #keys = new WeakMap<Sheet, string>();
  readonly #foods = new Map<string, string[]>();

  of(id: string, nested: Sheet): string {
    const known = this.#keys.get(nested);
    if (known !== undefined) return known;
    const lines = nested.plan.lines.map(({ source, nested: inner }) =>
      inner ? this.of(source.id, inner) : this.#food(source.food?.input.id ?? "", source.food?.input),
    );
    const key = JSON.stringify([id, nested.origin, lines]);
    this.#keys.set(nested, key);
    return key;
  }

  /** Which of the foods of an id that were met so far. */
  #food(id: string, food: unknown): number {
    const text = JSON.stringify(food) ?? "";
    const met = this.#foods.get(id) ?? [];
    this.#foods.set(id, met);
    return met.includes(text) ? met.indexOf(text) : met.push(text) - 1;
  }
}
