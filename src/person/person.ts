import type { Json } from "../document/leaves.ts";
import type { Allergen } from "../food/allergens.ts";
import type { Exact, Value } from "../number/exact.ts";

/** How active a life is: FAO/WHO/UNU's classes for adults (`activityClasses`), EFSA's levels for the young (`childActivity`). */
export type ActivityClass = "sedentary" | "active" | "vigorous";

/** What a person may declare, because it changes which cautions they need. Nothing is concluded from it. */
export type Condition =
  | "kidney-disease"
  | "insulin"
  | "warfarin"
  | "thyroid-disease"
  | "eating-disorder-history"
  | "coeliac-disease"
  /** Of any type; with insulin, declare that as well. */
  | "diabetes"
  | "hypertension"
  | "levothyroxine"
  | "lithium"
  | "mao-inhibitors"
  | "phenylketonuria"
  | "haemochromatosis";

/** A person as data. Sizes may be metric, or in pounds, stones, feet and inches. */
export interface Person {
  /** The body that the published equations and tables are to be read for. */
  readonly sex: "female" | "male";
  /** Years, 1 to 120; decimals allowed. */
  readonly age: Value;
  /** `"61 kg"`, `"134 lb"`, `"9 st 8 lb"`; a bare number is kilograms. */
  readonly mass: Value;
  /** `"1.70 m"`, `"170 cm"`, `"5 ft 7 in"`. */
  readonly height?: string;
  /** Fat-free mass, written like `mass`; or else `bodyFat`. */
  readonly leanMass?: Value;
  /** Fat as a share of body mass: `0.22` or `"22 %"`. */
  readonly bodyFat?: Value;
  /** A class, or a physical activity level: total energy over resting energy, 1 to 5. */
  readonly activity?: ActivityClass | Value;
  /** Trimester. */
  readonly pregnant?: 1 | 2 | 3;
  readonly breastfeeding?: boolean;
  /** While breastfeeding: months since the birth. The first months are taken where it is not said. */
  readonly monthsSinceBirth?: Value;
  /** Tables that part women by menopause go by this, or by age 51 where it is not said. */
  readonly postmenopausal?: boolean;
  readonly conditions?: readonly Condition[];
  /** Allergens that must not be served to this person. */
  readonly allergens?: readonly Allergen[];
  /** A clinician who watches over this person's weight loss; lifts the refusals of `dayTarget`. */
  readonly supervised?: { readonly by: string };
  /** Their name or number, for reports. */
  readonly id?: string;
  /** An app's own data, carried along untouched. */
  readonly meta?: Json;
}

/** A person once read: every figure exact, sizes in kilograms and metres. */
export interface Facts {
  readonly sex: "female" | "male";
  readonly age: Exact;
  readonly mass: Exact;
  readonly height?: Exact;
  /** Fat-free mass. */
  readonly lean?: Exact;
  readonly activity?: ActivityClass | Exact;
  readonly pregnant?: 1 | 2 | 3;
  readonly breastfeeding: boolean;
  readonly monthsSinceBirth?: Exact;
  readonly postmenopausal?: boolean;
  readonly conditions: readonly Condition[];
  readonly allergens: readonly Allergen[];
  readonly supervised?: { readonly by: string };
}
