import { type Language, say } from "../document/language.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import type { DemandDrift } from "./measure/drift.ts";
import type { Portion, ServedPortion } from "./portion.ts";

/** Something that was asked of a portion and is not brought. */
export interface MissedDemand {
  readonly text: string;
  /** Empty where there is nothing to say. */
  readonly why: string;
  /** Whether it was asked of the whole day. */
  readonly ofDay?: boolean;
}

/**
 * What a portion misses of what was asked, as it is handed out: of measured amounts, what they miss by
 * more than the tolerance, be it that exact ones met it; else what exact ones miss.
 */
export function missedOf(portion: Portion, language: Language): readonly MissedDemand[] {
  const { status, drift, misses } = portion;
  if (status === "away") return [];
  // Every portion of a plan knows its day; only those of days that were fitted as one have a fit.
  const day = (portion as Partial<Pick<ServedPortion, "dayFit">>).dayFit?.();
  const why = day ? day.textIn(language) : portion.why;
  if (status === "not-served")
    return [{ text: say(language, "nothing is served, since what must hold cannot"), why }];
  if (drift && drift.demands.length > 0) {
    return drift.demands
      .filter(({ holds }) => !holds)
      .map((demand) => ({ text: demand.text, why: demand.heldBefore ? measuring(demand, language) : why }));
  }
  if (status === "met") return [];
  if (day) {
    const own = day.missedIn(language, portion.meal).map((text) => ({ text, why }));
    const all = own.length > 0 ? own : day.missedIn(language).map((text) => ({ text, why, ofDay: true }));
    return all.length > 0 ? all : [{ text: why, why: "", ofDay: true }];
  }
  // A factor that is missed is no demand with a figure of its own.
  return misses.length === 0 ? [{ text: why, why: "" }] : misses.map(({ text }) => ({ text, why }));
}

function measuring({ before, unit, demand }: DemandDrift, language: Language): string {
  if (!before) return say(language, "measurable amounts");
  const exact =
    demand.energyShareOf === undefined
      ? showFigure(before, { significant: 4, language, ...(unit !== "" && { unit }) })
      : showPercent(before, { significant: 3, language });
  return say(language, "measurable amounts: exact ones bring {exact}", { exact });
}
