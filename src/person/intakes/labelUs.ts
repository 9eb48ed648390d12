import type { ComponentId } from "../../food/components.ts";
import { usDailyValues } from "../../food/data/usDailyValues.ts";
import type { LabelTable, ReferenceRow } from "./table.ts";

/** The terms in which the regulation counts a nutrient that has several. */
const BASES: { readonly [C in ComponentId]?: ReferenceRow["basis"] } = {
  vitaminARae: "RAE",
  vitaminE: "alpha-tocopherol",
  niacinEquivalents: "NE",
  folateDfe: "DFE",
};

/** Seen in no copy of the rule of 2016 that is to be relied on. */
const UNREAD: readonly ComponentId[] = ["saturatedFat", "cholesterol", "carbohydrateByDifference", "protein"];

/** The Daily Values as references to compare with; figures and citation stand in `usDailyValues`. What was read where stands there. */
export const labelUs: LabelTable = {
  source: "21 CFR 101.9(c)(8)(iv) and (c)(9), Daily Values (81 FR 33742, 2016)",
  for: "adults and children of four years and more; energy of 2,000 kcal",
  references: /* @__PURE__ */ references(),
};

function references(): ReferenceRow[] {
  return (Object.entries(usDailyValues) as [ComponentId, string][]).map(([id, values]) => {
    const basis = BASES[id];
    return {
      of: [id],
      kind: "DV",
      ...(basis && { basis }),
      values,
      check: UNREAD.includes(id) ? "unverified" : "copy",
    };
  });
}
