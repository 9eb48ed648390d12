import { describe, expect, it } from "vitest";
import { exactText } from "../../../src/number/digits.ts";
import {
  type Exact,
  exact,
  fraction,
  negate,
  ONE,
  times,
  type Value,
  ZERO,
} from "../../../src/number/exact.ts";
import { startingBasis, takeUp } from "../../../src/scale/solve/basis.ts";
import { minimise, minimiseInTurn } from "../../../src/scale/solve/minimise.ts";
import { worth } from "../../../src/scale/solve/optimal.ts";
import type {
  Objective,
  Optimal,
  Programme,
  Solution,
  SolverInterval,
  Standing,
} from "../../../src/scale/solve/programme.ts";
import { lessen } from "../../../src/scale/solve/simplex.ts";
import { inWholes, objectiveInWholes } from "../../../src/scale/solve/whole.ts";
import { faultsOf } from "./proof.ts";

type End = Value | undefined;

/** `[lower, upper]`, an end left open by `undefined`. */
const span = ([lower, upper]: readonly [End, End]): SolverInterval => ({
  ...(lower !== undefined && { lower: exact(lower) }),
  ...(upper !== undefined && { upper: exact(upper) }),
});

const terms = (coefficients: readonly Value[]): Objective =>
  coefficients.map((c, variable) => ({ variable, coefficient: exact(c) }));

function programme(
  variables: readonly (readonly [End, End])[],
  rows: readonly (readonly [readonly Value[], End, End])[],
): Programme {
  return {
    variables: variables.map(span),
    rows: rows.map(([coefficients, lower, upper]) => ({
      terms: terms(coefficients),
      ...span([lower, upper]),
    })),
  };
}

const notNegative = (count: number): (readonly [End, End])[] =>
  Array.from({ length: count }, () => [0, undefined]);
const texts = (all: readonly Exact[]): string[] => all.map(exactText);

function best(p: Programme, objective: Objective): Optimal {
  const solution = minimise(p, objective);
  expect(faultsOf(p, objective, solution)).toEqual([]);
  if (solution.status !== "optimal") throw new Error(solution.status);
  return solution;
}

function answer(p: Programme, objective: Objective): Solution {
  const solution = minimise(p, objective);
  expect(faultsOf(p, objective, solution)).toEqual([]);
  return solution;
}

describe("textbook programmes", () => {
  it("finds the cheapest day of four foods, and what its requirements cost", () => {
    // Winston, Operations Research: Applications and Algorithms, 4th edition, 2004, the diet
    // problem, p. 68: 90 cents, 3 scoops of ice cream and 1 cola; chocolate and sugar bind. The dual
    // prices 2.5 and 7.5 are unverified.
    const p = programme(notNegative(4), [
      [[400, 200, 150, 500], 500, undefined],
      [[3, 2, 0, 0], 6, undefined],
      [[2, 2, 4, 4], 10, undefined],
      [[2, 4, 1, 5], 8, undefined],
    ]);
    const { x, objectives, prices, binding } = best(p, terms([50, 20, 30, 80]));
    expect(texts(x)).toEqual(["0", "3", "1", "0"]);
    expect(texts(objectives)).toEqual(["90"]);
    expect(texts(prices.rows)).toEqual(["0", "2.5", "7.5", "0"]);
    expect(binding.rows).toEqual(["neither", "lower", "lower", "neither"]);
  });

  it("finds a cheapest diet with foods bounded on either side", () => {
    // SAS/OR User's Guide: Mathematical Programming, "The Linear Programming Solver", example Diet
    // Problem: cost and nutrients per unit as printed there. Its answer, cost 12.0813, cheese
    // 0.449499, fish 0.5, milk 0.053599, potato 1.865168, is unverified.
    const p = programme(
      [
        [0, undefined],
        [0, 1],
        [0, undefined],
        [0, undefined],
        [0.5, undefined],
        [0, undefined],
      ],
      [
        [[90, 120, 106, 97, 130, 180], 300, undefined],
        [[4, 8, 7, 1.3, 8, 9.2], undefined, 10],
        [[1, 5, 9, 0.1, 7, 1], 8, undefined],
        [[15, 11.7, 0.4, 22.6, 0, 17], 10, undefined],
      ],
    );
    const { x, objectives } = best(p, terms([2, 3.5, 8, 1.5, 11, 1]));
    const six = (f: Exact): string => (Number(f.n) / Number(f.d)).toFixed(6);
    expect(objectives.map((f) => (Number(f.n) / Number(f.d)).toFixed(4))).toEqual(["12.0813"]);
    expect(x.map(six)).toEqual(["0.000000", "0.053599", "0.449499", "1.865168", "0.500000", "0.000000"]);
  });

  it("prices scarce hours as the carpenter's textbook does", () => {
    // Winston, the same, the Dakota Furniture example: 280 dollars of 2 desks and 8 chairs, shadow
    // prices 0, 10, 10 (unverified). Making most of it is making its negative least.
    const p = programme(notNegative(3), [
      [[8, 6, 1], undefined, 48],
      [[4, 2, 1.5], undefined, 20],
      [[2, 1.5, 0.5], undefined, 8],
    ]);
    const { x, objectives, prices } = best(p, terms([-60, -30, -20]));
    expect(texts(x)).toEqual(["2", "0", "8"]);
    expect(texts(objectives)).toEqual(["-280"]);
    expect(texts(prices.rows)).toEqual(["0", "-10", "-10"]);
  });
});

describe("programmes on which a careless simplex cycles", () => {
  // Both unverified; that the answers are right is proven by their prices. The slacks, last, are
  // written as variables: it is from those that our walk, without its cautious steps, goes round
  // without end in 630 of the 5,040 orders of columns of each, and in some when cautious by half.
  interface Cycling {
    readonly rows: readonly (readonly [readonly Value[], Value])[];
    readonly costs: readonly Value[];
    readonly least: string;
  }
  const cycling: [string, Cycling][] = [
    [
      "Beale 1955, Cycling in the dual simplex algorithm",
      {
        rows: [
          [["1/4", -8, -1, 9, 1, 0, 0], 0],
          [["1/2", -12, "-1/2", 3, 0, 1, 0], 0],
          [[0, 0, 1, 0, 0, 0, 1], 1],
        ],
        costs: ["-3/4", 20, "-1/2", 6, 0, 0, 0],
        least: "-1.25",
      },
    ],
    [
      "Kuhn, in Balinski and Tucker 1969, Duality theory of linear programs",
      {
        rows: [
          [[-2, -9, 1, 9, 1, 0, 0], 0],
          [["1/3", 1, "-1/3", -2, 0, 1, 0], 0],
          [[2, 3, -1, -12, 0, 0, 1], 2],
        ],
        costs: [-2, -3, 1, 12, 0, 0, 0],
        least: "-2",
      },
    ],
  ];

  it.each(cycling)("%s", (_, { rows, costs, least }) => {
    const p = programme(
      notNegative(7),
      rows.map(([row, total]) => [row, total, total]),
    );
    expect(texts(best(p, terms(costs)).objectives)).toEqual([least]);
  });

  it.each(cycling)(
    "%s, by exact pivots from the slacks, in every order of columns",
    (_, { rows, costs, least }) => {
      for (const order of everyOrder([0, 1, 2, 3, 4, 5, 6])) {
        const inOrder = (row: readonly Value[]): Value[] => order.map((j) => row[j] ?? 0);
        const p = programme(
          notNegative(7),
          rows.map(([row, total]) => [inOrder(row), total, total]),
        );
        const b = startingBasis(inWholes(p));
        const slacks = order.map((j): Standing => (j > 3 ? "basic" : "lower"));
        takeUp(b, [...slacks, "lower", "lower", "lower"], 3);
        const whole = objectiveInWholes(terms(inOrder(costs)), b.whole);
        const { end } = lessen(b, whole.costs, 100);
        if (end !== "least" || exactText(worth(b, whole)) !== least)
          throw new Error(`${end} in order ${order}`);
      }
    },
  );
});

function everyOrder(all: readonly number[]): number[][] {
  if (all.length < 2) return [[...all]];
  return all.flatMap((first) => everyOrder(all.filter((j) => j !== first)).map((rest) => [first, ...rest]));
}

describe("degenerate programmes", () => {
  it("answers a programme of nothing", () => {
    expect(best({ variables: [], rows: [] }, [])).toMatchObject({ x: [], objectives: [ZERO] });
  });

  it("counts a variable named twice in a row and in an objective twice", () => {
    const twice = [
      { variable: 0, coefficient: exact("1/3") },
      { variable: 0, coefficient: exact("1/6") },
    ];
    const p = { variables: [{ lower: ZERO }], rows: [{ terms: twice, lower: ONE }] };
    expect(texts(best(p, twice).x)).toEqual(["2"]);
  });

  it("lets terms that cancel say nothing", () => {
    const none = [
      { variable: 0, coefficient: ONE },
      { variable: 0, coefficient: negate(ONE) },
    ];
    const p = { variables: [{ lower: ONE }], rows: [{ terms: none, upper: ZERO }] };
    expect(texts(best(p, none).x)).toEqual(["1"]);
  });

  it("keeps fixed variables and says so", () => {
    const p = programme(
      [
        ["1/3", "1/3"],
        [0, 1],
      ],
      [[[1, 1], 1, 1]],
    );
    const { x, binding } = best(p, terms([1, 1]));
    expect(texts(x)).toEqual(["1/3", "2/3"]);
    expect(binding.variables).toEqual(["both", "neither"]);
  });

  it("moves free variables below zero", () => {
    const p = programme(
      [
        [undefined, undefined],
        [undefined, 4],
      ],
      [
        [[1, 1], -7, undefined],
        [[1, -1], undefined, -9],
      ],
    );
    expect(texts(best(p, terms([1, 0])).x)).toEqual(["-11", "4"]);
  });

  it("is not disturbed by a row said twice, nor by twice a row", () => {
    const row = [[1, 2], 3, 3] as const;
    const p = programme(
      [
        [0, 2],
        [0, 2],
      ],
      [row, row, [[2, 4], 6, 6]],
    );
    expect(texts(best(p, terms([1, 1])).objectives)).toEqual(["1.5"]);
  });

  it("sees that a row of zeros cannot total more", () => {
    const solution = answer(programme([[0, 1]], [[[0], 1, undefined]]), terms([1]));
    expect(solution).toMatchObject({
      status: "infeasible",
      certificate: [{ on: "row", index: 0, end: "lower" }],
    });
  });

  it("sees bounds and rows whose own ends cross", () => {
    expect(answer(programme([[1, 0]], []), []).status).toBe("infeasible");
    expect(answer(programme([[0, 1]], [[[1], 1, 0.5]]), []).status).toBe("infeasible");
  });

  it("proves that two rows contradict", () => {
    const p = programme(
      [
        [0, 10],
        [0, 10],
      ],
      [
        [[1, 1], 8, undefined],
        [[1, 1], undefined, 7],
      ],
    );
    expect(answer(p, terms([1, 1]))).toMatchObject({ status: "infeasible", gap: ONE });
  });

  it("shows the way along which an objective has no least", () => {
    const p = programme(notNegative(2), [[[1, -1], undefined, 1]]);
    expect(answer(p, terms([0, -1]))).toMatchObject({ status: "unbounded", turn: 0 });
  });
});

describe("figures no float can hold", () => {
  it("tells a hair's breadth from none", () => {
    const hair = exact("1e-60");
    const p: Programme = {
      variables: [{ lower: ZERO, upper: ONE }],
      rows: [{ terms: [{ variable: 0, coefficient: ONE }], lower: fraction(hair.d + 1n, hair.d) }],
    };
    expect(answer(p, []).status).toBe("infeasible");
    expect(
      answer({ ...p, variables: [{ lower: ZERO, upper: fraction(hair.d + 1n, hair.d) }] }, []).status,
    ).toBe("optimal");
  });

  it("solves beside figures beyond any float", () => {
    const huge = exact("1e390");
    const p: Programme = {
      variables: [{ lower: ZERO }, { lower: ZERO, upper: huge }],
      rows: [
        {
          terms: [
            { variable: 0, coefficient: huge },
            { variable: 1, coefficient: ONE },
          ],
          lower: times(huge, exact(3)),
        },
      ],
    };
    expect(texts(best(p, terms([1, 0])).x)[0]).toBe("2");
  });
});

describe("effort", () => {
  const p = programme(notNegative(4), [
    [[400, 200, 150, 500], 500, undefined],
    [[3, 2, 0, 0], 6, undefined],
    [[2, 2, 4, 4], 10, undefined],
  ]);

  it("stops at the pivots allowed, and says how many it took", () => {
    expect(minimise(p, terms([50, 20, 30, 80]), { pivots: 0 })).toEqual({ status: "stopped", pivots: 0 });
    expect(minimise(p, terms([50, 20, 30, 80]), { pivots: 1 })).toEqual({ status: "stopped", pivots: 1 });
  });

  it("answers what needs no pivot with none allowed", () => {
    expect(minimise(programme([[2, 3]], []), terms([1]), { pivots: 0 }).status).toBe("optimal");
  });
});

describe("objectives in turn", () => {
  it("takes the second only among what is best by the first", () => {
    // Anything with x + y = 4 is best by the first; of those x = 1 is best by the second.
    const p = programme(
      [
        [1, 3],
        [0, 3],
      ],
      [[[1, 1], 4, undefined]],
    );
    const both = minimiseInTurn(p, [terms([1, 1]), terms([1, 0])]);
    expect(both).toMatchObject({ status: "optimal", x: [ONE, exact(3)], objectives: [exact(4), ONE] });
    const other = minimiseInTurn(p, [terms([1, 1]), terms([0, 1])]);
    expect(other).toMatchObject({ status: "optimal", x: [exact(3), ONE], objectives: [exact(4), ONE] });
  });

  it("gives the prices of the first, whatever comes after", () => {
    const p = programme(
      [
        [1, 3],
        [0, 3],
      ],
      [[[1, 1], 4, undefined]],
    );
    const first = best(p, terms([1, 1]));
    const both = minimiseInTurn(p, [terms([1, 1]), terms([1, 0])]);
    if (both.status !== "optimal") throw new Error(both.status);
    expect(both.prices.rows).toEqual(first.prices.rows);
    expect(faultsOf(p, terms([1, 1]), both)).toEqual([]);
  });

  it("says which turn has no least", () => {
    const p = programme(
      [
        [0, undefined],
        [0, undefined],
      ],
      [],
    );
    expect(minimiseInTurn(p, [terms([1, 0]), terms([0, -1])])).toMatchObject({
      status: "unbounded",
      turn: 1,
    });
  });
});
