import type { ModelData } from "highs";
import { type Exact, over, plus, sum, times, ZERO } from "../../../src/number/exact.ts";
import type { AmountsProblem, QuantitySum } from "../../../src/scale/solve/amounts.ts";
import { asNumber, highs } from "./outside.ts";

/**
 * A rounding written for a mixed-integer solver, otherwise than we solve it. One binary per
 * candidate, one per line taken. The drift is linear once `share = inverse × binary` stands for its
 * product with the inverse of the common factor: `0 ≤ share ≤ highest × binary`, and a line's shares add
 * up to the inverse, so that of the candidate taken is all of it. Columns: excess, inverse, each line's
 * drift, binaries, shares.
 */
export function asMixedModel(p: AmountsProblem, aim: "excess" | { readonly excess: number }): ModelData {
  const lines = p.lines.length;
  const first: number[] = [];
  let count = 2 + lines;
  for (const { candidates } of p.lines) {
    first.push(count);
    count += candidates.length;
  }
  const binaries = count - 2 - lines;
  const ratios = p.lines.map(({ exact, candidates }) =>
    candidates.map(({ quantity }) => (exact.n === 0n ? 0 : asNumber(over(quantity, exact)))),
  );
  const positive = ratios.flat().filter((r) => r > 0);
  const [low, high] = p.common
    ? [1 / asNumber(p.common), 1 / asNumber(p.common)]
    : [1 / Math.max(1, ...positive), 1 / Math.min(1, ...positive)];
  const rows: { terms: [number, number][]; lower: number; upper: number }[] = [];
  const open = highs.infinity;
  for (const [i, { candidates, weight, exact }] of p.lines.entries()) {
    const at = first[i] ?? 0;
    rows.push({ terms: candidates.map((_, k) => [at + k, 1]), lower: 1, upper: 1 });
    if (weight.n === 0n || exact.n === 0n) continue;
    const shares = candidates.map((_, k): [number, number] => [at + binaries + k, ratios[i]?.[k] ?? 0]);
    rows.push({
      terms: [...candidates.map((_, k): [number, number] => [at + binaries + k, 1]), [1, -1]],
      lower: 0,
      upper: 0,
    });
    for (const [k] of candidates.entries())
      rows.push({
        terms: [
          [at + binaries + k, 1],
          [at + k, -high],
        ],
        lower: -open,
        upper: 0,
      });
    rows.push({ terms: [...shares, [2 + i, -1]], lower: -open, upper: 1 });
    rows.push({ terms: [...shares, [2 + i, 1]], lower: 1, upper: open });
  }
  for (const d of p.demands) {
    const { scale } = d;
    // In parts of the scale, as the solver's tolerances are absolute.
    const by = scale === undefined ? 1 : asNumber("perUnit" in scale ? scaleAsWritten(p, scale) : scale);
    // A scale that goes with the choice makes a product with the excess, which has to be given then.
    const varying = !d.firm && scale && "perUnit" in scale ? scale : undefined;
    if (varying && aim === "excess") throw new Error("not linear: give the excess");
    const give = varying && aim !== "excess" ? aim.excess : 0;
    for (const side of [1, -1]) {
      const end = side > 0 ? d.upper : d.lower;
      if (!end) continue;
      const terms = p.lines.flatMap(({ candidates }, i) =>
        candidates.map(({ quantity }, k): [number, number] => {
          const per = asNumber(d.perUnit[i] ?? ZERO) - side * give * asNumber(varying?.perUnit[i] ?? ZERO);
          return [(first[i] ?? 0) + k, (per * asNumber(quantity)) / by];
        }),
      );
      const constant = asNumber(d.constant) - side * give * asNumber(varying?.constant ?? ZERO);
      const limit = (asNumber(end) - constant) / by;
      rows.push({
        terms: d.firm || varying ? terms : [...terms, [0, -side]],
        lower: side > 0 ? -open : limit,
        upper: side > 0 ? limit : open,
      });
    }
  }
  const columns = count + binaries;
  const colCost = new Float64Array(columns);
  const colUpper = new Float64Array(columns).fill(open);
  const colLower = new Float64Array(columns);
  if (aim === "excess") colCost[0] = 1;
  else {
    colUpper[0] = aim.excess;
    for (const [i, { weight }] of p.lines.entries()) colCost[2 + i] = asNumber(weight);
  }
  colLower[1] = low;
  colUpper[1] = high;
  const { integer, continuous } = highs.constants.variableType;
  const integrality = Array.from({ length: columns }, (_, j) =>
    j >= 2 + lines && j < count ? integer : continuous,
  );
  for (let j = 2 + lines; j < count; j += 1) colUpper[j] = 1;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { terms } of rows) {
    for (const [j, value] of terms) {
      if (value === 0) continue;
      indices.push(j);
      values.push(value);
    }
    starts.push(indices.length);
  }
  return {
    numCols: columns,
    numRows: rows.length,
    colCost,
    colLower,
    colUpper,
    rowLower: rows.map((r) => r.lower),
    rowUpper: rows.map((r) => r.upper),
    matrix: { format: "csr", numRows: rows.length, numCols: columns, starts, indices, values },
    integrality,
  };
}

function scaleAsWritten(p: AmountsProblem, { perUnit, constant }: QuantitySum): Exact {
  return plus(constant, sum(p.lines.map(({ exact }, i) => times(perUnit[i] ?? ZERO, exact))));
}

export interface OutsideChoice {
  readonly status: "optimal" | "infeasible" | "other";
  readonly objective: number;
  readonly chosen: readonly number[];
}

export function roundOutside(p: AmountsProblem, aim: "excess" | { readonly excess: number }): OutsideChoice {
  return highs.withModel(asMixedModel(p, aim), (model) => {
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-9 });
    model.run();
    const names = highs.constants.modelStatus;
    const status = model.getModelStatus();
    if (status === names.infeasible) return { status: "infeasible", objective: 0, chosen: [] } as const;
    if (status !== names.optimal) return { status: "other", objective: 0, chosen: [] } as const;
    const { colValue } = model.getSolution();
    let at = 2 + p.lines.length;
    const chosen = p.lines.map(({ candidates }) => {
      const taken = candidates.findIndex((_, k) => (colValue[at + k] ?? 0) > 0.5);
      at += candidates.length;
      return taken;
    });
    return { status: "optimal", objective: model.getObjectiveValue(), chosen } as const;
  });
}

/** Whether two fractions are as near as doubles can tell. */
export function isNear(a: number, b: number, within = 1e-6): boolean {
  return Math.abs(a - b) <= within * (1 + Math.abs(b));
}
