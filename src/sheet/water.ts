import { britishEnglish, type Language, say } from "../document/language.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, fraction, isZero, minus, negate, ONE, ZERO } from "../number/exact.ts";
import { componentIndex, isMissing, type LineMark, type SheetPlan } from "./plan.ts";
import type { Masses, Values, Weights } from "./values.ts";

/** What cooking does to the water of a batch, in grams. */
export interface WaterChange {
  /** Taken up (above 0) or given off (below 0): never more than the pot is known to hold. */
  readonly change: Exact;
  /** What the pot is known to hold before cooking; not looked up where cooking takes nothing off. */
  readonly held: Exact;
  /**
   * What cooking takes off beyond that: fat, drippings, or a yield that is wrong. Where there is
   * any, nobody knows how much of the loss was water, and so how much water is left.
   */
  readonly beyond: Exact;
}

/**
 * Water follows the mass balance, as far as there is water to lose: bacon fried to a third of its
 * mass has lost fat too.
 */
export function waterChange(plan: SheetPlan, weights: Weights, { change }: Masses): WaterChange {
  if (change.n >= 0n) return { change, held: ZERO, beyond: ZERO };
  const held = potWater(plan, weights);
  const beyond = minus(negate(change), held);
  return beyond.n > 0n ? { change: negate(held), held, beyond } : { change, held, beyond: ZERO };
}

function potWater(plan: SheetPlan, { lifted, denominator }: Weights): Exact {
  const water = componentIndex("water");
  let n = 0n;
  plan.lines.forEach(({ line, source }, i) => {
    if (line.added === "cooking") n += (lifted[i] ?? 0n) * (source.values[water] ?? 0n);
  });
  return fraction(n, denominator);
}

/**
 * The marks of water after cooking. What the pot takes up or gives off is reckoned from the yield, so that
 * the water of what is in it is derived; where cooking takes off more than there is, none of it is known.
 */
export function marksCooked(
  plan: SheetPlan,
  marks: readonly LineMark[],
  { grams }: Values,
  { change, beyond }: WaterChange,
): readonly LineMark[] {
  if (isZero(change) && isZero(beyond)) return marks;
  const inPot = (i: number): boolean => plan.lines[i]?.line.added === "cooking";
  const isDried = !isZero(beyond);
  const said = isDried ? marks.filter((m) => !inPot(m.line)) : marks;
  const kind = isDried ? "missing" : "derived";
  const has = new Set(said.filter(isMissing).map((m) => m.line));
  const ofPot = plan.lines.flatMap(({ line }, i): LineMark[] =>
    inPot(i) && !isZero(grams[i] ?? ZERO) && !has.has(i)
      ? [{ line: i, key: line.key, mark: { at: "", kind, share: ONE } }]
      : [],
  );
  const isDose = (m: LineMark): number => (plan.lines[m.line]?.line.scaling === "per-portion" ? 0 : 1);
  return [...said, ...ofPot].sort((a, b) => isDose(a) - isDose(b) || a.line - b.line);
}

/** Says that cooking takes off more than water, with both figures; nothing where it does not. */
export function driedNote(
  { held, beyond, change }: WaterChange,
  language: Language = britishEnglish,
): string[] {
  if (isZero(beyond)) return [];
  const grams = (f: Exact): string => showFigure(f, { unit: "g", language });
  return [
    say(
      language,
      "cooking takes off {lost}, more than the {water} of water that went into the pot: fat or drippings were lost too, or the yield is wrong; water as eaten is not known, and all else is taken to stay whole",
      { lost: grams(minus(beyond, change)), water: grams(held) },
    ),
  ];
}
