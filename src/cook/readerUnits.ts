import type { Language } from "../document/language.ts";
import { readLanguage } from "../document/readLanguage.ts";
import { fault, kindOf } from "../number/error.ts";
import { temperaturesFor } from "./stepTemperatures.ts";
import { timesFor } from "./stepTimes.ts";

/**
 * A step of a method with its temperatures and times in the reader's units, as the language asks by
 * `temperatures` and `times`; all else stays as written, names in `{}` included. Read are `180 °C`,
 * `350F`, `160 to 180 degrees C`, `2 h`, `1 1/2 hours`, `90–120 min`; a step that gives both scales
 * already keeps them. What has no figure ("half an hour"), seconds and gas marks are left alone.
 *
 * Degrees are converted exactly and then rounded as they were written: multiples of 5 from 100 °C up
 * to the nearest 5, others to whole degrees (common practice, no source). A difference ("20 °C lower",
 * "by 20 °C") is told from a temperature by its English words alone.
 *
 * Throws `format-malformed`, and the codes of a language that is none.
 *
 * @param step - Text as the recipe has it.
 * @param language - Whose units and words to use.
 * @example
 * ```ts
 * const reader = { ...americanEnglish, temperatures: "fahrenheit", times: "hours" } as const;
 * inReaderUnits("Bake {dough} at 180 °C for 90 min.", reader); // => Bake {dough} at 355 °F for 1 h 30 min.
 * ```
 */
export function inReaderUnits(step: string, language: Language): string {
  if (typeof step !== "string")
    throw fault("format-malformed", `expected a step, got ${kindOf(step)}`, "write it as text", ["step"]);
  const { temperatures, times } = readLanguage(language);
  if (temperatures === undefined && times === undefined) return step;
  const degrees = temperatures && temperaturesFor(step, temperatures, language);
  return step
    .split(/(\{[^{}]+\})/)
    .map((text) => (/^\{[^{}]+\}$/.test(text) ? text : timesFor(degrees?.(text) ?? text, times, language)))
    .join("");
}
