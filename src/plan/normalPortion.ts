import { britishEnglish, type Language, say } from "../document/language.ts";
import { amount, gramsOf } from "../measure/amount.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, fraction, isZero, over, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** How large someone's portion of a dish is beside what its recipe calls normal. */
export interface PortionSize {
  readonly dish: string;
  /** In grams, as eaten. */
  readonly normal: Exact;
  /** So many times the normal portion. */
  readonly times: Exact;
  /** Beyond double, or under half: something to look at before it is served. Common practice, no source. */
  readonly flag: "large" | "small" | undefined;
  readonly text: string;
}

const DOUBLE: Exact = /* @__PURE__ */ fraction(2n);
const HALF: Exact = /* @__PURE__ */ fraction(1n, 2n);

/** Tells it of each dish whose recipe says what a normal portion is. */
export function sizesOf(dishes: ReadonlyMap<string, Sheet>): readonly PortionSize[] {
  return [...dishes].flatMap(([dish, s]): PortionSize[] => {
    const { normalPortion } = s.origin;
    const normal = normalPortion === undefined ? ZERO : (gramsOf(amount(normalPortion)) ?? ZERO);
    const served = s.mass.portion;
    if (isZero(normal) || isZero(served)) return [];
    const times = over(served, normal);
    const flag =
      compareRatios(times, DOUBLE) > 0 ? "large" : compareRatios(times, HALF) < 0 ? "small" : undefined;
    const size = { dish, normal, times, flag } as const;
    return [{ ...size, text: sizeText(size, britishEnglish) }];
  });
}

/** Tells a portion's size in a language. */
export function sizeText({ normal, times, flag }: Omit<PortionSize, "text">, language: Language): string {
  const gaps = {
    times: showFigure(times, { language }),
    normal: showFigure(normal, { unit: "g", language }),
  };
  if (flag === undefined) return say(language, "{times} times a normal portion of {normal}", gaps);
  return flag === "large"
    ? say(language, "{times} times a normal portion of {normal}: more than double", gaps)
    : say(language, "{times} times a normal portion of {normal}: less than half", gaps);
}
