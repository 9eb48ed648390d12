import { cunningham1980 } from "./cunningham1980.ts";
import { cunningham1991 } from "./cunningham1991.ts";
import type { EnergyEquation, EquationId } from "./equation.ts";
import { harrisBenedict1984 } from "./harrisBenedict1984.ts";
import { henry2005, henry2005Mass } from "./henry2005.ts";
import { katchMcardle } from "./katchMcardle.ts";
import { mifflinStJeor } from "./mifflinStJeor.ts";
import { schofield1985 } from "./schofield1985.ts";

/** Every equation for resting energy, by id. */
export const energyEquations: { readonly [Id in EquationId]: EnergyEquation } = {
  "mifflin-st-jeor": mifflinStJeor,
  "henry-2005": henry2005,
  "henry-2005-mass": henry2005Mass,
  "schofield-1985": schofield1985,
  "cunningham-1980": cunningham1980,
  "cunningham-1991": cunningham1991,
  "katch-mcardle": katchMcardle,
  "harris-benedict-1984": harrisBenedict1984,
};
