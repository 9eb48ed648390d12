import type { ComponentId } from "../food/components.ts";
import { type Exact, equals, isZero, minus, over, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import { changesBetween } from "./change.ts";
import { checkSheet } from "./given.ts";
import type { Sheet } from "./sheet.ts";
import { stated } from "./stated.ts";
import type { Tally } from "./tally.ts";

/** A line that is not as it was; grams are of one portion. */
export interface LineChange {
  readonly key: string;
  readonly name: string;
  readonly change: "added" | "removed" | "swapped" | "moved";
  readonly before: Exact | null;
  readonly after: Exact | null;
  /** After less before. */
  readonly by: Exact;
}

/** A component of one portion that is not as it was. */
export interface ComponentChange {
  readonly component: ComponentId;
  readonly before: Tally;
  readonly after: Tally;
  /** After less before, line by line: lines that did not move cancel, whether or not they are known. */
  readonly change: Tally;
}

/** A portion that does not weigh what it did, in grams as eaten. */
export interface MassChange {
  readonly before: Exact;
  readonly after: Exact;
  /** After less before. */
  readonly by: Exact;
}

/** What moved between two sheets, for one portion as eaten. */
export class Difference extends Result {
  readonly is = "steelyard/difference@1";
  readonly lines: readonly LineChange[];
  /** Nothing where a portion weighs the same. */
  readonly mass: MassChange | undefined;
  readonly components: readonly ComponentChange[];
  readonly before: Sheet;
  readonly after: Sheet;

  /** @internal Use {@link difference}. */
  constructor(before: Sheet, after: Sheet) {
    super();
    this.before = before;
    this.after = after;
    this.lines = lineChanges(before, after);
    this.mass = massChange(before.portionMass, after.portionMass);
    const changeIn = changesBetween(before, after);
    const all = [...new Set([...before.plan.components, ...after.plan.components])];
    this.components = all.flatMap((component): ComponentChange[] => {
      const [was, is] = [before.portion(component), after.portion(component)];
      if (was.same(is)) return [];
      return [{ component, before: was, after: is, change: changeIn(component) }];
    });
  }

  /** Whether a portion is the same, line by line, in its mass and in every component. */
  get none(): boolean {
    return this.lines.length === 0 && this.mass === undefined && this.components.length === 0;
  }

  override toString(): string {
    if (this.none) return "nothing moved";
    const lines = this.lines.map(({ key, change }) => `${key} ${change}`);
    return `moved: ${[...lines, ...(this.components.length > 0 ? [`${this.components.length} components`] : [])].join(", ")}`;
  }
}

/**
 * What moved from one sheet to another: lines by key, in grams of one portion, and mass and
 * components of one portion as eaten. Throws `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const was = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "50 g" }] },
 *   starterFoods,
 * );
 * const moved = difference(was, was.edit({ oats: "60 g" }));
 * console.log(moved.lines.map((line) => `${line.key} ${line.change} by ${line.by} g`)); // => [ 'oats moved by 10 g' ]
 * ```
 */
export function difference(before: Sheet, after: Sheet): Difference {
  checkSheet(before, "before");
  checkSheet(after, "after");
  return new Difference(before, after);
}

function lineChanges(before: Sheet, after: Sheet): LineChange[] {
  const of = (s: Sheet): Map<string, { readonly name: string; readonly id: string; readonly grams: Exact }> =>
    new Map(
      s.plan.lines.map(({ line, source }, i) => {
        return [
          line.key,
          {
            name: stated(source.name, source.state),
            id: source.id,
            grams: over(s.values.grams[i] ?? ZERO, s.values.portions),
          },
        ];
      }),
    );
  const [was, is] = [of(before), of(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key): LineChange[] => {
    const [a, b] = [was.get(key), is.get(key)];
    if (a && b && a.id === b.id && equals(a.grams, b.grams)) return [];
    const by = minus(b?.grams ?? ZERO, a?.grams ?? ZERO);
    return [
      {
        key,
        name: b?.name ?? a?.name ?? key,
        change: a === undefined ? "added" : b === undefined ? "removed" : a.id === b.id ? "moved" : "swapped",
        before: a ? a.grams : null,
        after: b ? b.grams : null,
        by,
      },
    ];
  });
}

function massChange(before: Exact, after: Exact): MassChange | undefined {
  const by = minus(after, before);
  if (isZero(by)) return undefined;
  return { before, after, by };
}
