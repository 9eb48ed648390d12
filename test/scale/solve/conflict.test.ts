import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact, ONE, ZERO } from "../../../src/number/exact.ts";
import { conflict } from "../../../src/scale/solve/conflict.ts";
import { minimise } from "../../../src/scale/solve/minimise.ts";
import type { Programme, ProgrammeRow } from "../../../src/scale/solve/programme.ts";
import { met, runs, seedFor } from "../../runs.ts";
import { asModel, solveOutside } from "./outside.ts";
import { anyProgramme } from "./programmes.ts";
import { faultsOfProof } from "./proof.ts";

const x = [{ variable: 0, coefficient: ONE }];
const atLeast = (n: number): ProgrammeRow => ({ terms: x, lower: exact(n) });
const atMost = (n: number): ProgrammeRow => ({ terms: x, upper: exact(n) });
const variables = [{ lower: ZERO, upper: exact(10) }];

describe("conflict", () => {
  it("names two rows that contradict and leaves out the rest", () => {
    const rows = [atLeast(1), atLeast(6), atMost(9), atMost(5)];
    expect(conflict({ variables, rows }, [0, 1, 2, 3])).toMatchObject({ status: "conflict", rows: [1, 3] });
  });

  it("names one row that the bounds alone rule out", () => {
    expect(conflict({ variables, rows: [atLeast(5), atLeast(11)] }, [0, 1])).toMatchObject({ rows: [1] });
  });

  it("names no row where what may not yield cannot hold by itself", () => {
    const rows = [atLeast(8), atLeast(7), atMost(2)];
    expect(conflict({ variables, rows }, [0])).toMatchObject({ status: "conflict", rows: [] });
  });

  it("keeps to earlier rows where later ones would do as well", () => {
    const rows = [atLeast(6), atMost(5), atLeast(6), atMost(5)];
    expect(conflict({ variables, rows }, [0, 1, 2, 3])).toMatchObject({ rows: [0, 1] });
  });

  it("finds nothing wrong where nothing is", () => {
    expect(conflict({ variables, rows: [atLeast(5)] }, [0])).toEqual({ status: "feasible" });
  });

  it("stops at the pivots allowed", () => {
    const both = [
      { variable: 0, coefficient: ONE },
      { variable: 1, coefficient: ONE },
    ];
    const rows = [
      { terms: both, lower: exact(15) },
      {
        terms: [
          { variable: 0, coefficient: ONE },
          { variable: 1, coefficient: exact(2) },
        ],
        upper: exact(14),
      },
    ];
    const p = {
      variables: [
        { lower: ZERO, upper: exact(10) },
        { lower: ZERO, upper: exact(10) },
      ],
      rows,
    };
    expect(conflict(p, [0, 1], { pivots: 0 }).status).toBe("stopped");
    expect(conflict(p, [0, 1])).toMatchObject({ status: "conflict", rows: [0, 1] });
  });

  it("counts pivots over all of its solves", () => {
    let several = 0;
    const property = fc.property(anyProgramme, ({ programme }) => {
      const every = programme.rows.map((_, i) => i);
      const answer = conflict(programme, every);
      if (answer.status !== "conflict" || answer.rows.length < 2 || answer.proof.pivots === 0) return;
      several += 1;
      expect(conflict(programme, every, { pivots: answer.proof.pivots })).toEqual(answer);
      for (let pivots = 0; pivots < answer.proof.pivots; pivots += 1) {
        const short = conflict(programme, every, { pivots });
        if (short.status === "feasible") throw new Error("feasible");
        expect(short.status === "stopped" ? short.pivots : short.proof.pivots).toBeLessThanOrEqual(pivots);
      }
    });
    fc.assert(property, { seed: seedFor("conflict pivots", 13), numRuns: runs(500) });
    expect(several).toBeGreaterThan(met(20));
  });

  it("cannot stand, and can with any one of its rows left out; HiGHS says the same", () => {
    let found = 0;
    const property = fc.property(anyProgramme, ({ programme }) => {
      const mayYield = programme.rows.map((_, i) => i).filter((i) => i % 3 !== 2);
      const answer = conflict(programme, mayYield);
      const keeping = (rows: readonly number[]): Programme => ({
        variables: programme.variables,
        rows: programme.rows.filter((_, i) => !mayYield.includes(i) || rows.includes(i)),
      });
      if (answer.status !== "conflict") {
        expect(answer.status).toBe("feasible");
        expect(minimise(programme, []).status).toBe("optimal");
        return;
      }
      found += 1;
      expect(faultsOfProof(programme, answer.proof)).toEqual([]);
      const named = answer.proof.certificate.filter(
        ({ on, index }) => on === "row" && mayYield.includes(index),
      );
      expect(named.every(({ index }) => answer.rows.includes(index))).toBe(true);
      expect(solveOutside(asModel(keeping(answer.rows), [])).status).toBe("infeasible");
      for (const row of answer.rows) {
        expect(minimise(keeping(answer.rows.filter((r) => r !== row)), []).status).toBe("optimal");
      }
    });
    fc.assert(property, { seed: seedFor("conflict", 12), numRuns: runs(500) });
    expect(found).toBeGreaterThan(met(100));
  });
});
