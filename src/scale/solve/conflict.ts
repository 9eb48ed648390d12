import { minimiseInTurn } from "./minimise.ts";
import type { Effort, Infeasible, Programme } from "./programme.ts";

/** Which rows cannot stand together. */
export type Conflict =
  | { readonly status: "feasible" }
  | {
      readonly status: "conflict";
      /**
       * Rows, among those that may yield, that cannot all hold beside the bounds and the rows that
       * may not yield; leave out any one of them and the rest can. Empty where even the bounds and
       * the rows that may not yield cannot hold.
       */
      readonly rows: readonly number[];
      /** The proof; it names no other row that may yield. */
      readonly proof: Infeasible;
    }
  | { readonly status: "stopped"; readonly pivots: number };

/**
 * Finds an irreducible set of rows that cannot stand together. Of several such sets it keeps to
 * the rows of lower index, since the later ones are tried for leaving out first.
 *
 * Method: deletion filter (Chinneck and Dravnieks 1991, "Locating minimal infeasible constraint
 * sets in linear programs", unverified), begun from the rows that the proof of infeasibility names
 * and narrowed to those of each further proof. Pivots are counted over all of its solves.
 */
export function conflict(programme: Programme, mayYield: readonly number[], effort: Effort = {}): Conflict {
  const whole = minimiseInTurn(programme, [], effort);
  if (whole.status === "stopped") return whole;
  if (whole.status !== "infeasible") return { status: "feasible" };
  const yielding = new Set(mayYield);
  let proof = whole;
  let { pivots } = whole;
  let kept = namedBy(proof, yielding);
  for (const row of [...kept].reverse()) {
    if (!kept.includes(row)) continue;
    const standing = new Set(kept.filter((other) => other !== row));
    const left = effort.pivots === undefined ? {} : { pivots: effort.pivots - pivots };
    const without = minimiseInTurn(withOnly(programme, yielding, standing), [], left);
    pivots += without.pivots;
    if (without.status === "stopped") return { status: "stopped", pivots };
    if (without.status !== "infeasible") continue;
    proof = without;
    kept = namedBy(proof, standing);
  }
  return { status: "conflict", rows: kept, proof: { ...proof, pivots } };
}

/** The rows of a set that a proof rests on, in order. */
function namedBy({ certificate }: Infeasible, rows: ReadonlySet<number>): number[] {
  const named = certificate
    .filter(({ on, index }) => on === "row" && rows.has(index))
    .map(({ index }) => index);
  return [...new Set(named)].sort((a, b) => a - b);
}

/** The programme with the yielding rows that do not stand left open, so that the rest keep their index. */
function withOnly(
  programme: Programme,
  yielding: ReadonlySet<number>,
  standing: ReadonlySet<number>,
): Programme {
  const rows = programme.rows.map((row, i) =>
    yielding.has(i) && !standing.has(i) ? { terms: row.terms } : row,
  );
  return { variables: programme.variables, rows };
}
