import { byBand, type Second } from "./second.ts";

/** D-A-CH, vitamin A, typed again as the SGE's page lays it out (DACH 2020): by age, men and women beside each other. */
export const dachVitaminAAgain: readonly Second[] = byBand(
  ["vitaminARae"],
  [
    ["1-3", "300"],
    ["4-6", "350"],
    ["7-9", "450"],
    ["10-12", "600"],
    ["M 13-14", "800"],
    ["F 13-14", "700"],
    ["M 15-18", "950"],
    ["F 15-18", "800"],
    ["M 19-64", "850"],
    ["F 19-64", "700"],
    ["M 65+", "800"],
    ["F 65+", "700"],
    ["P 19+", "800"],
    ["L 19+", "1300"],
  ],
);

/** D-A-CH, vitamin C, typed again from a Bulgarian page and a newspaper's list that print the DGE's figures. */
export const dachVitaminCAgain: readonly Second[] = byBand(
  ["vitaminC"],
  [
    ["1-3", "20"],
    ["4-6", "30"],
    ["7-9", "45"],
    ["10-12", "65"],
    ["13-14", "85"],
    ["M 15-18", "105"],
    ["F 15-18", "90"],
    ["M 19-90", "110"],
    ["F 19-90", "95"],
    ["P 19+", "105"],
    ["L 19+", "125"],
  ],
);

/** D-A-CH, calcium, from the DGE's news of 2013 that a trade journal prints: what changed, and what did not. */
export const dachCalciumAgain: readonly Second[] = byBand(
  ["calcium"],
  [
    ["4-6", "750"],
    ["13-18", "1200"],
    ["19+", "1000"],
  ],
);
