import { settledAmount, weighed } from "../cook/settledAmount.ts";
import { type Language, say } from "../document/language.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import type { Exact } from "../number/exact.ts";
import type { PartServing } from "../plan/share/parts.ts";
import type { PotShare } from "./card.ts";

/** What is taken of a pot, as a cook's page and a person's page both tell it. */
export function potShare(
  {
    pot,
    grams: exact,
    millilitres,
    weighed: onScale,
    isRest,
  }: Pick<PartServing, "pot" | "grams" | "millilitres" | "weighed" | "isRest">,
  share: Exact | undefined,
  language: Language,
): Omit<PotShare, "when"> {
  const read = onScale && settledAmount(onScale, undefined, language);
  const isGrams = onScale?.unit === "g";
  const volume = millilitres ? showFigure(millilitres, { places: 0, unit: "ml", language }) : "";
  const grams = isGrams && read !== undefined ? read : weighed(exact, language);
  // Grams say nothing to a kitchen that cannot weigh them.
  const unweighed = share !== undefined && pot?.notes.some(({ code }) => code === "shares-exact");
  const part =
    unweighed && volume === ""
      ? say(language, "{share} of it", { share: showPercent(share, { significant: 2, language }) })
      : volume;
  return {
    weigh: isRest ? say(language, "the rest ({grams})", { grams }) : grams,
    measure: read === undefined || isGrams ? part : read,
  };
}
