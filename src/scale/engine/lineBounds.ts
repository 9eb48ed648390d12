import { type Exact, over, ZERO } from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import type { Sheet } from "../../sheet/sheet.ts";

/** A line's own least or most. */
export interface LineBound {
  readonly key: string;
  /** Its place in the sheet. */
  readonly line: number;
  readonly end: "least" | "most";
  /** Grams of one portion. */
  readonly amount: Exact;
  /** What the line weighs in one portion as written. */
  readonly grams: Exact;
  /** What the line is multiplied by right at the bound; nothing where it has no grams. */
  readonly factor: Exact | undefined;
}

/** A sheet never changes, so its bounds are read once for all who eat of it. */
const READ: WeakMap<Sheet, readonly LineBound[]> = /* @__PURE__ */ new WeakMap();

/**
 * The bounds of a sheet's lines that can matter, in the order of the lines' keys. Nothing moves a line
 * of no grams: a most always holds, a least above 0 never does.
 */
export function boundsOf(s: Sheet): readonly LineBound[] {
  const found = READ.get(s) ?? read(s);
  READ.set(s, found);
  return found;
}

function read({ plan, values }: Sheet): LineBound[] {
  return plan.lines
    .flatMap(({ line: { key }, least, most }, line): LineBound[] => {
      const grams = over(values.grams[line] ?? ZERO, values.portions);
      const bound = (end: LineBound["end"], amount: Exact | undefined): LineBound[] => {
        if (amount === undefined || (end === "least" && amount.n === 0n)) return [];
        if (grams.n === 0n && end === "most") return [];
        return [{ key, line, end, amount, grams, factor: grams.n === 0n ? undefined : over(amount, grams) }];
      };
      return [...bound("least", least), ...bound("most", most)];
    })
    .sort((a, b) => compareText(a.key, b.key));
}
