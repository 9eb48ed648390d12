import type { IntakeTable } from "./table.ts";

/**
 * EFSA 2008, Coumarin in flavourings and other food ingredients with flavouring properties, EFSA Journal
 * 793 (AFC Panel): a tolerable daily intake, which the BfR (2012) goes by, and the UK's Food Standards Agency
 * in its survey of 2011. No body of nutrients sets a figure, so this one stands under every authority.
 */
export const tolerable: IntakeTable = {
  source: "EFSA 2008, coumarin, EFSA Journal 793",
  stages: ["1+"],
  uppers: [
    {
      of: ["coumarin"],
      kind: "TDI",
      covers: "all sources",
      per: "kg",
      values: "0.1",
      note: "for every day of a life: somewhat more for a week or two is no concern (BfR 2012)",
      check: "copy",
    },
  ],
};
