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

/**
 * EFSA 2015, caffeine of mothers: it stands under authorities of whom none was read, since what it guards
 * against is the same everywhere.
 */
export const mothersCaffeine: IntakeTable = {
  source: "EFSA 2015, safety of caffeine, EFSA Journal 13(5):4102",
  stages: ["P 10+", "L 10+"],
  uppers: [
    {
      of: ["caffeine"],
      kind: "safe level of intake",
      covers: "all sources",
      values: "200 200",
      note: "EFSA's, where this authority's own was not read",
      check: "issuer",
    },
  ],
};
