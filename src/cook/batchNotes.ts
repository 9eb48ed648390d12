import { type Language, say } from "../document/language.ts";
import type { Days } from "./days.ts";
import { keptNotes } from "./keeping.ts";
import type { MadeBatch } from "./madeBatch.ts";
import { type CookingNote, costNotes, largeNotes, merged, roomNotes } from "./notes.ts";

/** What a cook should know of a nested recipe that is made ahead. */
export function batchNotes(batch: MadeBatch, days: Days, language: Language): readonly CookingNote[] {
  const { day, recipe, sheet } = batch;
  const places = new Set(batch.draws.map((draw) => days.place(draw.day ?? "") ?? 0));
  const eaten = [...places].sort((a, b) => a - b);
  const kept = { days, made: batch.place().made, eaten, isUnsaid: false };
  const said = [
    ...roomNotes(batch),
    ...largeNotes(batch),
    ...costNotes(batch, batch.exact),
    ...keptNotes(sheet.origin.notes ?? [], kept, "made"),
  ];
  const at = { days: day === undefined ? [] : [day], meal: undefined, dish: undefined, recipe };
  return merged(
    said.map(({ code, phrase, gaps, source }): CookingNote => {
      return { ...at, code, text: say(language, phrase, gaps?.(language)), source };
    }),
  );
}
