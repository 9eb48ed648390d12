import fc from "fast-check";
import {
  type Exact,
  exact,
  fraction,
  minus,
  negate,
  ONE,
  plus,
  times,
  ZERO,
} from "../../../src/number/exact.ts";
import type {
  Objective,
  Programme,
  ProgrammeRow,
  ProgrammeTerm,
  SolverInterval,
} from "../../../src/scale/solve/programme.ts";

/** Programmes for the tests and the benches; the same seed gives the same programmes. */

export interface Asked {
  readonly programme: Programme;
  readonly objective: Objective;
}

const term = (variable: number, coefficient: Exact): ProgrammeTerm => ({ variable, coefficient });
const decimal = (max: number, places: number): fc.Arbitrary<Exact> =>
  fc.integer({ min: 0, max: max * 10 ** places }).map((n) => fraction(BigInt(n), 10n ** BigInt(places)));

/** Per 100 g figures as food tables print them, times grams as recipes have them: exact products. */
const contribution = fc
  .tuple(fc.integer({ min: 5, max: 400 }), decimal(40, 2))
  .map(([grams, per100]) => times(fraction(BigInt(grams), 100n), per100));

interface Drawn {
  readonly base: Exact;
  readonly constant: Exact;
  readonly parts: readonly Exact[];
  readonly kind: "exactly" | "least" | "most" | "band" | "share";
  readonly slack: Exact;
  readonly wild: boolean;
}

/**
 * What a fit asks: factors of parts and adjustable lines over the common factor, `1 + rise − fall`,
 * and one over the common factor itself, last. Targets come from drawn factors, so most can be met;
 * a wild one is moved away from them.
 */
export function fitProgramme(moving: number, demands: { min: number; max: number }): fc.Arbitrary<Asked> {
  const drawn: fc.Arbitrary<Drawn> = fc.record({
    base: contribution,
    constant: fc.oneof(fc.constant(ZERO), contribution),
    parts: fc.array(
      fc.oneof({ weight: 4, arbitrary: contribution }, { weight: 1, arbitrary: fc.constant(ZERO) }),
      {
        minLength: moving,
        maxLength: moving,
      },
    ),
    kind: fc.constantFrom(
      "exactly" as const,
      "exactly" as const,
      "least" as const,
      "most" as const,
      "band" as const,
      "share" as const,
    ),
    slack: decimal(1, 2),
    wild: fc.integer({ min: 0, max: 19 }).map((n) => n === 0),
  });
  return fc
    .record({
      common: fc.integer({ min: 5, max: 40 }).map((n) => fraction(BigInt(n), 20n)),
      factors: fc.array(
        fc.integer({ min: 10, max: 40 }).map((n) => fraction(BigInt(n), 20n)),
        { minLength: moving, maxLength: moving },
      ),
      perPortion: fc.array(fc.boolean(), { minLength: moving, maxLength: moving }),
      drawn: fc.array(drawn, { minLength: demands.min, maxLength: demands.max }),
    })
    .map(({ common, factors, perPortion, drawn }) => {
      const t = 2 * moving;
      const variables: SolverInterval[] = [];
      for (let j = 0; j < moving; j += 1)
        variables.push({ lower: ZERO, upper: ONE }, { lower: ZERO, upper: fraction(1n, 2n) });
      variables.push({ lower: fraction(1n, 10n), upper: exact(10) });
      const rows = drawn.flatMap((d) => demandRows(d, common, factors, t));
      for (let j = 0; j < moving; j += 1) {
        // Every sixth or so: a most for one portion, at a little over what the drawn factor asks.
        if (perPortion[j] && j % 3 === 0) {
          const most = times(times(common, factors[j] as Exact), fraction(11n, 10n));
          rows.push({
            terms: [term(2 * j, ONE), term(2 * j + 1, negate(ONE)), term(t, negate(most))],
            upper: negate(ONE),
          });
        }
      }
      const objective = factors.flatMap((_, j) => [term(2 * j, ONE), term(2 * j + 1, exact(2))]);
      return { programme: { variables, rows }, objective };
    });
}

function demandRows(d: Drawn, common: Exact, factors: readonly Exact[], t: number): ProgrammeRow[] {
  let whole = d.base;
  let met = d.base;
  for (const [j, a] of d.parts.entries()) {
    whole = plus(whole, a);
    met = plus(met, times(a, factors[j] as Exact));
  }
  const value = plus(times(common, met), d.constant);
  const target = d.wild ? times(value, exact("1.7")) : value;
  const moves = d.parts.flatMap((a, j) => [term(2 * j, a), term(2 * j + 1, negate(a))]);
  const against = (limit: Exact): ProgrammeTerm => term(t, minus(d.constant, limit));
  const least = {
    terms: [...moves, against(times(target, minus(ONE, times(d.slack, exact("0.1")))))],
    lower: negate(whole),
  };
  const most = {
    terms: [...moves, against(times(target, plus(ONE, times(d.slack, exact("0.1")))))],
    upper: negate(whole),
  };
  if (d.kind === "least") return [least];
  if (d.kind === "most") return [most];
  if (d.kind === "band") return [least, most];
  if (d.kind === "exactly")
    return [{ terms: [...moves, against(target)], lower: negate(whole), upper: negate(whole) }];
  // A share: the common factor only enters through what stays the same for everyone.
  return [{ terms: [...moves, term(t, d.constant)], lower: times(negate(whole), exact("1.2")) }];
}

const small = fc.integer({ min: -6, max: 6 }).map((n) => fraction(BigInt(n)));
const odd = fc
  .tuple(fc.integer({ min: -40, max: 40 }), fc.constantFrom(1n, 2n, 3n, 7n, 10n))
  .map(([n, d]) => fraction(BigInt(n), d));

const span: fc.Arbitrary<SolverInterval> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .tuple(odd, odd)
      .map(([a, b]) => (minus(a, b).n <= 0n ? { lower: a, upper: b } : { lower: b, upper: a })),
  },
  { weight: 3, arbitrary: fc.constant({ lower: ZERO }) },
  { weight: 1, arbitrary: odd.map((lower) => ({ lower })) },
  { weight: 1, arbitrary: odd.map((upper) => ({ upper })) },
  { weight: 1, arbitrary: odd.map((at) => ({ lower: at, upper: at })) },
  { weight: 1, arbitrary: fc.constant({}) },
);

/** Anything: free, fixed and one-sided variables, zero rows, rows said twice, crossing rows. */
export const anyProgramme: fc.Arbitrary<Asked> = fc
  .record({ n: fc.integer({ min: 1, max: 7 }), m: fc.integer({ min: 0, max: 6 }) })
  .chain(({ n, m }) =>
    fc.record({
      variables: fc.array(span, { minLength: n, maxLength: n }),
      rows: fc.array(
        fc.record({
          coefficients: fc.array(fc.oneof(fc.constant(ZERO), small, small, odd), {
            minLength: n,
            maxLength: n,
          }),
          span,
        }),
        { minLength: m, maxLength: m },
      ),
      twice: fc.boolean(),
      costs: fc.array(fc.oneof(fc.constant(ZERO), small), { minLength: n, maxLength: n }),
    }),
  )
  .map(({ variables, rows, twice, costs }) => {
    const written = rows.map(({ coefficients, span }) => ({
      terms: coefficients.map((c, j) => term(j, c)),
      ...span,
    }));
    const [first] = written;
    return {
      programme: { variables, rows: twice && first ? [...written, first] : written },
      objective: costs.map((c, j) => term(j, c)),
    };
  });
