import type { Highs, ModelData } from "highs";
import loadHighs from "highs";
import type { Exact } from "../../../src/number/exact.ts";
import type { Objective, Programme } from "../../../src/scale/solve/programme.ts";

/**
 * The independent method: HiGHS (registry package `highs`), a solver in binary floats, given the
 * same programme. Only its status and its least objective are compared.
 */
export const highs: Highs = await loadHighs();

export function asNumber({ n, d }: Exact): number {
  const big = 10n ** 17n;
  return n < big && n > -big && d < big ? Number(n) / Number(d) : Number((n * 10n ** 20n) / d) / 1e20;
}

export function asModel({ variables, rows }: Programme, objective: Objective): ModelData {
  const colCost = new Float64Array(variables.length);
  for (const t of objective) colCost[t.variable] = (colCost[t.variable] ?? 0) + asNumber(t.coefficient);
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const row of rows) {
    const merged = new Map<number, number>();
    for (const t of row.terms)
      merged.set(t.variable, (merged.get(t.variable) ?? 0) + asNumber(t.coefficient));
    for (const [j, value] of merged) {
      if (value === 0) continue;
      indices.push(j);
      values.push(value);
    }
    starts.push(indices.length);
  }
  const low = (f: Exact | undefined): number => (f ? asNumber(f) : -highs.infinity);
  const high = (f: Exact | undefined): number => (f ? asNumber(f) : highs.infinity);
  return {
    numCols: variables.length,
    numRows: rows.length,
    colCost,
    colLower: variables.map((v) => low(v.lower)),
    colUpper: variables.map((v) => high(v.upper)),
    rowLower: rows.map((r) => low(r.lower)),
    rowUpper: rows.map((r) => high(r.upper)),
    matrix: { format: "csr", numRows: rows.length, numCols: variables.length, starts, indices, values },
  };
}

export type Outside =
  | { readonly status: "optimal"; readonly objective: number }
  | { readonly status: "infeasible" | "unbounded" | "other" };

export function solveOutside(data: ModelData): Outside {
  return highs.withModel(data, (model) => {
    model.options.set({ output_flag: false });
    model.run();
    const status = model.getModelStatus();
    const names = highs.constants.modelStatus;
    if (status === names.optimal) return { status: "optimal", objective: model.getObjectiveValue() } as const;
    if (status === names.infeasible) return { status: "infeasible" } as const;
    if (status === names.unbounded) return { status: "unbounded" } as const;
    return { status: "other" } as const;
  });
}
