import { isRecord } from "../document/safe.ts";

/**
 * What a table says of the yield of one food or one way of cooking: its name, the mass cooked and the mass
 * that it came of, in one unit; where the table tells it, between which yields most such foods lie and how
 * many there were, as in `0.62-0.81:75`.
 */
export type YieldRow = readonly [name: string, cooked: string, raw: string, spread?: string];

/** Published yields, by code. */
export interface YieldTable {
  readonly source: string;
  readonly codes: { readonly [code: string]: YieldRow };
}

const GRAMS = /^\d{1,6}(\.\d{1,9})?$/;
const BETWEEN = /^\d{1,4}(\.\d{1,6})?-\d{1,4}(\.\d{1,6})?:\d{1,6}$/;

/** Checks what stands for tables of yields, and tells each fault. */
export function checkYields(
  yields: unknown,
  wrong: (path: (string | number)[], message: string, hint: string) => void,
): void {
  if (yields === undefined) return;
  if (!Array.isArray(yields)) {
    wrong(["yields"], "not tables of yields", "give a list: [{ source, codes }]");
    return;
  }
  for (const [i, each] of yields.entries()) {
    if (!isRecord(each) || typeof each.source !== "string" || !isRecord(each.codes)) {
      wrong(["yields", i], "not a table of yields", "give source and codes");
      continue;
    }
    for (const [code, row] of Object.entries(each.codes)) {
      const [name, cooked, raw, spread] = Array.isArray(row) ? row : [];
      const isMass = (text: unknown): boolean =>
        typeof text === "string" && GRAMS.test(text) && Number(text) > 0;
      const hint = 'give a name, the mass cooked and the mass raw: ["rice", "280", "100"]';
      if (typeof name !== "string" || !isMass(cooked) || !isMass(raw))
        wrong(["yields", i, code], "not a yield", hint);
      else if (spread !== undefined && !(typeof spread === "string" && BETWEEN.test(spread)))
        wrong(["yields", i, code], "not a spread", 'write low-high:count: "0.62-0.81:75"');
    }
  }
}
