import type { MeasureSet } from "../measureSet.ts";

/**
 * Imperial measures. The gallon is 4.54609 dm³ exactly; quart 1/4, pint 1/8, gill 1/4 pint, fluid
 * ounce 1/20 pint.
 *
 * Source: UK Weights and Measures Act 1985, Schedule 1 Part IV (gallon as quoted at sizes.com; all
 * five also read in a copy of the Hong Kong Weights and Measures Ordinance, which prints them alike).
 *
 * No law fixed an imperial spoon or cup. British measuring spoons hold 5, 10 and 15 ml (common
 * practice, unverified), and so do these; older books' spoons differ. There is no cup: printed
 * tables give 250 ml or half a pint, so it has to be said which is meant.
 */
export const imperial: MeasureSet = {
  name: "imperial",
  source: "Weights and Measures Act 1985, Schedule 1 Part IV; spoons by common practice",
  ml: {
    tsp: "5",
    dessertspoon: "10",
    tbsp: "15",
    "fl oz": "28.4130625",
    gill: "142.0653125",
    pint: "568.26125",
    quart: "1136.5225",
    gallon: "4546.09",
  },
};
