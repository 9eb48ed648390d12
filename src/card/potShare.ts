import { settledAmount, weighed } from "../cook/settledAmount.ts";
import { type Language, say } from "../document/language.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import type { Exact } from "../number/exact.ts";
import type { PartServing } from "../plan/share/parts.ts";
import type { Take } from "./card.ts";

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
): Take {
  const read = onScale && settledAmount(onScale, undefined, language);
  const isGrams = onScale?.unit === "g";
  const volume = millilitres ? showFigure(millilitres, { places: 0, unit: "ml", language }) : "";
  const grams = isGrams && read !== undefined ? read : weighed(exact, language);
  const rest = (text: string): string =>
    isRest ? say(language, "the rest ({grams})", { grams: text }) : text;
  // Pieces are counted.
  if (read !== undefined && !isGrams) return { lead: rest(read), also: grams };
  // Grams say nothing to a kitchen that cannot weigh them.
  if (pot?.notes.some(({ code }) => code === "shares-exact")) {
    if (volume !== "") return { lead: rest(volume), also: "" };
    if (share !== undefined) {
      const part = showPercent(share, { significant: 2, language });
      return { lead: say(language, "{share} of it", { share: part }), also: "" };
    }
  }
  return { lead: rest(grams), also: volume };
}
