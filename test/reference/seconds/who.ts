import { byBand, type Second } from "./second.ts";

/**
 * FAO and WHO, typed again. Iron at 12 % and iodine from FAO's own page of the report of 2002, appendix 1, table 1,
 * of which all up to women of 51 to 65 was read; the minerals of that page where the second edition kept them.
 */
export const whoIronAgain: readonly Second[] = byBand(
  ["iron"],
  [
    ["1-3", "5"],
    ["4-6", "5"],
    ["7-9", "7"],
    ["M 10-14", "12"],
    ["M 15-18", "16"],
    ["F 10-14", "28"],
    ["F 15-18", "26"],
    ["M 19-65", "11"],
    ["F 19-50", "24"],
    ["F 51-65", "9"],
  ],
);

export const whoIodineAgain: readonly Second[] = byBand(
  ["iodine"],
  [
    ["1-3", "75"],
    ["4-6", "110"],
    ["7-9", "100"],
    ["M 10-11", "135"],
    ["M 12-18", "110"],
    ["F 10-11", "140"],
    ["F 12-18", "100"],
    ["M 19-65", "130"],
    ["F 19-65", "110"],
  ],
);

export const whoMineralsAgain: readonly Second[] = byBand(
  ["calcium", "magnesium", "selenium", "zinc"],
  [
    ["1-3", "500 60 17 4.1"],
    ["4-6", "600 . . ."],
    ["7-9", "700 100 21 5.6"],
    ["M 10-18", "1300 . . ."],
    ["F 10-18", "1300 . 26 ."],
    ["M 19-65", "1000 260 34 7.0"],
    ["F 19-50", "1000 220 26 4.9"],
    ["F 51-65", "1300 220 26 4.9"],
  ],
);

/** Vitamins of young children, typed again from FAO's food composition table for the Pacific (2004), appendix III A. */
export const whoChildrenAgain: readonly Second[] = byBand(
  ["vitaminARe", "thiamin", "riboflavin", "niacinEquivalents"],
  [
    ["1-3", "400 0.5 0.5 6"],
    ["4-6", "450 0.6 0.6 8"],
  ],
);

/** Zinc at moderate bioavailability, of WHO and FAO 2004, in a journal's table (Nutrients 2020;12:2464, table 1). */
export const whoZincAgain: readonly Second[] = byBand(
  ["zinc"],
  [
    ["1-3", "4.1"],
    ["4-6", "4.8"],
    ["7-9", "5.6"],
    ["M 10-18", "8.6"],
    ["F 10-18", "7.2"],
    ["M 19+", "7.0"],
    ["F 19+", "4.9"],
    ["P 19+", "10.0"],
    ["L 19+", "9.5"],
  ],
);
