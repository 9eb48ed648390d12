import { type Exact, exact, times } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Check } from "./check.ts";
import type { ActivityClass } from "./person.ts";

/** A class of an adult's lifestyle and the physical activity levels (total over resting energy) that it spans. */
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
 * table 5.3. Its own example takes 1.85 as the middle of 1.70 to 1.99; the other two bands were read in a
 * copy, and their middles follow in the same way.
 */
export const activityClasses: { readonly [Class in ActivityClass]: ActivityBand } = /* @__PURE__ */ freezeAll(
  {
    sedentary: {
      least: "1.40",
      most: "1.69",
      middle: "1.55",
      meaning: "sedentary or light: sitting work, little walking, no training",
      source,
      check: "copy",
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
      check: "copy",
    },
  },
);

/** What a class of lifestyle comes to in the young of an age. */
export interface ChildActivity {
  /** Age in years: from this, and below that. */
  readonly from: number;
  readonly below: number;
  readonly levels: { readonly [Class in ActivityClass]: string };
}

/**
 * EFSA 2013, Dietary Reference Values for energy, EFSA Journal 11(1):3005: the levels that requirements of
 * the young are given for, which an adult's would overshoot. Read in its Summary of Dietary Reference Values,
 * version 4 (2017), table 1 (page 2): 1.4 alone to 3 years, 1.4, 1.6 and 1.8 to 9, 1.6, 1.8 and 2.0 to 17,
 * for low active to very active lifestyles. Growth is counted in by 1 % on each (Summary report 2017, page 12).
 */
export const childActivity: readonly ChildActivity[] = /* @__PURE__ */ freezeAll([
  { from: 1, below: 4, levels: { sedentary: "1.4", active: "1.4", vigorous: "1.4" } },
  { from: 4, below: 10, levels: { sedentary: "1.4", active: "1.6", vigorous: "1.8" } },
  { from: 10, below: 18, levels: { sedentary: "1.6", active: "1.8", vigorous: "2.0" } },
]);

const GROWTH = "1.01";
const EFSA = "EFSA 2013, Dietary Reference Values for energy, EFSA Journal 11(1):3005";

/** Returns the physical activity level of a class at an age. */
export function levelOfClass(activity: ActivityClass, age: Exact): Exact {
  const young = childActivityAt(age);
  return young
    ? times(exact(young.levels[activity]), exact(GROWTH))
    : exact(activityClasses[activity].middle);
}

/** Returns whose levels a class is read by at an age, and its band where it has one. */
export function classAt(
  activity: ActivityClass,
  age: Exact,
): Pick<ActivityBand, "source" | "check"> & Partial<Pick<ActivityBand, "least" | "most">> {
  const young = childActivityAt(age);
  return young ? { source: EFSA, check: "issuer" } : activityClasses[activity];
}

function childActivityAt(age: Exact): ChildActivity | undefined {
  return childActivity.find(
    ({ from, below }) => compareRatios(age, exact(from)) >= 0 && compareRatios(age, exact(below)) < 0,
  );
}

/** Where a level lies outside those that are usual at an age: on which side of which, and who says so. */
export interface UnusualLevel extends Pick<ActivityBand, "source" | "check"> {
  readonly text: string;
}

/** Tells of a level that is unusual at an age: for adults one that FAO/WHO/UNU 2004 finds is not kept up. */
export function unusualLevel(level: Exact, age: Exact): UnusualLevel | undefined {
  const young = childActivityAt(age);
  const { sedentary, vigorous } = young?.levels ?? {
    sedentary: activityClasses.sedentary.least,
    vigorous: activityClasses.vigorous.most,
  };
  const most = young ? times(exact(vigorous), exact(GROWTH)) : exact(vigorous);
  const isBelow = compareRatios(level, exact(sedentary)) < 0;
  if (!isBelow && compareRatios(level, most) <= 0) return undefined;
  const side = isBelow ? "below" : "above";
  const span = sedentary === vigorous ? sedentary : `${sedentary} to ${vigorous}`;
  const whose = young ? "that EFSA reckons with at this age" : "that people keep up for long";
  return {
    text: `A physical activity level ${side} the ${span} ${whose}: the estimate is less sure there.`,
    ...(young ? { source: EFSA, check: "issuer" } : { source, check: "copy" }),
  };
}
