import { type Exact, fraction, minus, negate, ONE, plus, sum, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { stopped } from "../../scale/engine/programme.ts";
import { minimiseInTurn } from "../../scale/solve/minimise.ts";
import type { Objective, ProgrammeRow } from "../../scale/solve/programme.ts";
import { type Cut, type Region, short } from "./suitingRatios.ts";

/** Turns allowed; each adds something that the ratios have to keep to. */
const TURNS = 1_000;
/** Cuts taken up at once: more make every turn dearer, fewer make more turns. */
const AT_ONCE = 12;

/**
 * Ratios that suit everyone, those nearest to the recipe's: the sum of departures, a fall counted
 * twice, is least, and then each in turn. Nothing where no ratios suit all.
 */
export function commonRatios(
  regions: readonly Region[],
  count: number,
  pivots: number | undefined,
): readonly Exact[] | undefined {
  const kept = new Map<string, Cut>();
  for (let turn = 0; turn < TURNS; turn += 1) {
    const ratios = nearestWithin([...kept.values()], count, pivots);
    if (!ratios) return undefined;
    const known = regions.flatMap(({ cuts }) => cuts.find((cut) => short(cut, ratios)) ?? []);
    const broken = known.length > 0 ? known : regions.flatMap((region) => region.refuse(ratios) ?? []);
    if (broken.length === 0) return ratios;
    for (const cut of tightest(broken).slice(0, AT_ONCE)) kept.set(cut.coefficients.join(), cut);
  }
  throw stopped(TURNS);
}

/** Of cuts that go the same way, the one that leaves least. */
function tightest(cuts: readonly Cut[]): readonly Cut[] {
  const found = new Map<string, Cut>();
  for (const cut of cuts) {
    const key = cut.coefficients.join();
    const now = found.get(key);
    if (!now || compareRatios(cut.least, now.least) > 0) found.set(key, cut);
  }
  return [...found.values()];
}

function nearestWithin(
  cuts: readonly Cut[],
  count: number,
  pivots: number | undefined,
): readonly Exact[] | undefined {
  const each = Array.from(
    { length: count },
    (_, p): Objective => [
      { variable: 2 * p, coefficient: ONE },
      { variable: 2 * p + 1, coefficient: TWO },
    ],
  );
  const variables = each.flatMap(() => [{ lower: ZERO }, { lower: ZERO, upper: ONE }]);
  const solution = minimiseInTurn({ variables, rows: cuts.map(rowOf) }, [each.flat(), ...each], { pivots });
  if (solution.status === "stopped") throw stopped(solution.pivots);
  if (solution.status !== "optimal") return undefined;
  const { x } = solution;
  return each.map((_, p) => plus(ONE, minus(x[2 * p] ?? ZERO, x[2 * p + 1] ?? ZERO)));
}

const TWO: Exact = /* @__PURE__ */ fraction(2n);

/** Each ratio is 1, and a rise, less a fall. */
function rowOf({ coefficients, least }: Cut): ProgrammeRow {
  const terms = coefficients.flatMap((own, p) => {
    const coefficient = fraction(own);
    return [
      { variable: 2 * p, coefficient },
      { variable: 2 * p + 1, coefficient: negate(coefficient) },
    ];
  });
  return { terms, lower: minus(least, sum(coefficients.map((n) => fraction(n)))) };
}

/** Into so many steps a tolerance is cut where the least of it is looked for. */
const STEPS = 64n;

/** Ratios for a pot, and by which share of it someone's demand may be missed for them. */
export interface Shared {
  readonly ratios: readonly Exact[];
  readonly tolerance: Exact;
}

/**
 * Ratios for all by which the worst miss is least, to a sixty-fourth of what is allowed; nothing
 * where no ratios suit all even with that. `at` gives everyone's regions for a tolerance.
 */
export function leastMissed(
  at: (tolerance: Exact) => readonly Region[],
  most: Exact,
  count: number,
  pivots: number | undefined,
): Shared | undefined {
  const shared = (step: bigint): Shared | undefined => {
    const tolerance = times(most, step === STEPS ? ONE : fraction(step, STEPS));
    const ratios = commonRatios(at(tolerance), count, pivots);
    return ratios && { ratios, tolerance };
  };
  let best = shared(0n);
  if (best || most.n === 0n) return best;
  best = shared(STEPS);
  let [missed, met] = [0n, STEPS];
  while (best && met - missed > 1n) {
    const middle = (missed + met) / 2n;
    const found = shared(middle);
    if (found) [best, met] = [found, middle];
    else missed = middle;
  }
  return best;
}
