import { compare, exact, type Fraction } from "../number/fraction.ts";
import { freezeAll } from "../number/freeze.ts";
import type { Check } from "./check.ts";
import type { ActivityClass } from "./person.ts";

/** A class of lifestyle and the physical activity levels (total over resting energy) that it spans. */
export interface ActivityBand {
  readonly least: string;
  readonly most: string;
  /** What the class is taken for: the middle of its band. */
  readonly middle: string;
  readonly meaning: string;
  readonly source: string;
  readonly check: Check;
}

const source = "FAO/WHO/UNU 2004, Human energy requirements, table 5.3";

/**
 * FAO/WHO/UNU, Human energy requirements: report of a joint expert consultation, Rome 2001 (2004),
 * table 5.3. Its own example takes 1.85 as the middle of 1.70 to 1.99; the other two middles follow
 * in the same way.
 */
export const activityClasses: { readonly [Class in ActivityClass]: ActivityBand } = /* @__PURE__ */ freezeAll(
  {
    sedentary: {
      least: "1.40",
      most: "1.69",
      middle: "1.55",
      meaning: "sedentary or light: sitting work, little walking, no training",
      source,
      check: "unverified",
    },
    active: {
      least: "1.70",
      most: "1.99",
      middle: "1.85",
      meaning: "active or moderately active: work on the feet, or an hour of brisk exercise a day",
      source,
      check: "issuer",
    },
    vigorous: {
      least: "2.00",
      most: "2.40",
      middle: "2.20",
      meaning: "vigorous: hours of heavy work or training on most days",
      source,
      check: "unverified",
    },
  },
);

/** On which side a level lies of those that FAO/WHO/UNU 2004 finds people can keep up, 1.40 to 2.40. */
export function sideOfUsual(level: Fraction): "below" | "above" | undefined {
  if (compare(level, exact(activityClasses.sedentary.least)) < 0) return "below";
  return compare(level, exact(activityClasses.vigorous.most)) > 0 ? "above" : undefined;
}
