import type { IodineFigure } from "./iodine.ts";

/**
 * Coumarin, mg per 100 g, of the starter foods that bring it. SR28 does not say of which cinnamon its
 * ground one is; most on sale is cassia, and Ceylon cinnamon has nearly none. The value is what the BfR
 * reckons with: 2 g of cassia bring the 6 mg that 60 kg may have. The ends are the means of twelve brands
 * (Blahova and Svobodova 2012, abstract: 2,650 to 7,017 mg in 1 kg); one jar can lie outside them.
 */
export const coumarin: Readonly<Record<string, IodineFigure>> = {
  "cinnamon-ground": {
    value: "300",
    low: "265",
    high: "701.7",
    derived: "6 mg in 2 g, taken for cassia",
    source:
      "BfR (Germany), press release 26/2012; ends: Blahova and Svobodova 2012, Scientific World Journal 2012:263851",
  },
};
