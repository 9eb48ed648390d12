/**
 * Iodine, µg per 100 g, of the few starter foods for which a published figure can be named. USDA
 * SR28 does not carry iodine, so all other foods are silent on it. It varies severalfold with feed,
 * soil, season and sea: read these as an order of magnitude.
 *
 * Seaweeds were surveyed dry, and stand here dry, or with the water that SR28 gives them raw. Their value is
 * the mean of ten products (Yeh 2014); low and high are the ends that three papers print, and one batch
 * can still lie outside them.
 *
 * Milk of every fat is of one survey, printed in 2020; the other foods are of several sources, each named beside
 * its figure: the database of USDA, FDA and ODS (release 1.0, 2020), which would give them all from one, could
 * not be read. None was read in the issuer's own table: all but one in a public copy, that one unverified.
 */
export interface IodineFigure {
  readonly value: string;
  readonly low?: string;
  readonly high?: string;
  readonly error?: string;
  readonly derived?: string;
  readonly source: string;
}

const ods =
  "US National Institutes of Health, Office of Dietary Supplements, iodine fact sheet for health professionals (about 2020; read in a copy)";
const composition =
  "McCance and Widdowson's The Composition of Foods, 6th edition (2002; read in a copy, which does not say raw or cooked)";
const seaweed =
  "mean of Yeh et al. 2014, J Food Drug Anal 22:189-196; ends with Smyth 2021, Eur Thyroid J 10:101-108, table 1, and Teas et al. 2004, Thyroid 14:836-841 (abstracts and table, each read in a copy)";

/**
 * Milk in shops of the United States, whole to skimmed: its fat made no difference. The standard error is that of
 * the mean, 5.5 µg; single samples lie from 39 to 185, 95 of a hundred. 240 ml by SR28's weight of a cup.
 */
const milk: IodineFigure = {
  value: "34.3",
  error: "2.2",
  derived: "85 (39 to 185) µg in 240 ml (248 g)",
  source:
    "Roseland et al. 2020, Nutrients 12:1246 (abstract, read in a copy): retail milk of 24 supermarkets, US Department of Agriculture",
};

export const iodine: Readonly<Record<string, IodineFigure>> = {
  "cod-baked": { value: "186", derived: "158 µg in 3 oz (85 g)", source: ods },
  "milk-whole": milk,
  "milk-whole-vitamin-d": milk,
  "milk-semi-skimmed": milk,
  "milk-skimmed": milk,
  "yoghurt-greek-fat-free": { value: "51.1", derived: "116 µg in 8 oz (227 g)", source: ods },
  "egg-hard-boiled": { value: "52", derived: "26 µg in 1 large egg (50 g)", source: ods },
  "beef-liver-braised": { value: "16.5", derived: "14 µg in 3 oz (85 g)", source: ods },
  "egg-raw": { value: "54", source: composition },
  cheddar: { value: "30", source: composition },
  "butter-salted": { value: "38", source: composition },
  "yoghurt-plain-whole": { value: "63", source: composition },
  "kelp-raw": {
    value: "46483",
    low: "4439",
    high: "184200",
    derived: "2523.5 (241 to 10000) µg in 1 g dry, 18.42 g dry in 100 g",
    source: seaweed,
  },
  "wakame-raw": {
    value: "2795",
    low: "600",
    high: "3704",
    derived: "139.7 (30 to 185.1) µg in 1 g dry, 20.01 g dry in 100 g",
    source: seaweed,
  },
  "laver-raw": {
    value: "552",
    low: "240",
    high: "2994",
    derived: "36.9 (16 to 200) µg in 1 g dry, 14.97 g dry in 100 g",
    source: seaweed,
  },
  // As sold, dry: what the surveys print of 1 g.
  "kelp-dried": {
    value: "252350",
    low: "24100",
    high: "1000000",
    derived: "2523.5 (241 to 10000) µg in 1 g dry",
    source: seaweed,
  },
  "wakame-dried": {
    value: "13970",
    low: "3000",
    high: "18510",
    derived: "139.7 (30 to 185.1) µg in 1 g dry",
    source: seaweed,
  },
  "nori-dried": {
    value: "3690",
    low: "1600",
    high: "20000",
    derived: "36.9 (16 to 200) µg in 1 g dry",
    source: seaweed,
  },
  "tuna-light-canned-water-drained": {
    value: "8.2",
    derived: "7 µg in 3 oz (85 g)",
    source: "US National Institutes of Health, Office of Dietary Supplements, iodine fact sheet (unverified)",
  },
};
