import { type Language, say } from "../document/language.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, exact, fraction } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { RecipeNote } from "../recipe/document.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Days } from "./days.ts";
import type { Gaps, SpokenNote } from "./notes.ts";
import type { DishSession } from "./session.ts";

/** Says what a recipe tells of food that is kept, and whether it is kept longer. Nothing is added to what it says. */
export function keepingNotes(session: DishSession): readonly SpokenNote[] {
  const { days, dish, span } = session.made();
  const isNamed = days.names.length > 0;
  const isUnsaid = !isNamed && session.pots.some(({ people }) => people.some(({ count }) => count.gt(1)));
  const at = { days, made: span.cooked, eaten: session.eatenAt(), isUnsaid };
  return keptNotes(notesIn(dish.batch), at, "cooked");
}

/** When something is made, and on which days it is eaten or used. */
export interface KeptPot {
  readonly days: Days;
  readonly made: number;
  readonly eaten: readonly number[];
  /** Whether several portions are eaten, and no day says when. */
  readonly isUnsaid: boolean;
}

/** What is told of a recipe that is kept, in its own words; of one that is `made` ahead, or `cooked` to be eaten. */
export function keptNotes(
  own: readonly RecipeNote[],
  { days, made, eaten, isUnsaid }: KeptPot,
  how: "cooked" | "made",
): readonly SpokenNote[] {
  const last = eaten.at(-1) ?? made;
  const isKept = last > made || isUnsaid;
  const asWritten = own.flatMap(({ kind, text, source }): SpokenNote[] =>
    kind === "safety" || (isKept && kind !== "general") ? [{ code: kind, phrase: text, source }] : [],
  );
  if (!isKept) return asWritten;
  if (isUnsaid) return [{ code: "keeping-not-known", phrase: NO_DAYS }, ...asWritten];
  const limits = own.filter(({ days }) => days !== undefined);
  const phrases = PHRASES[how];
  if (limits.length === 0) {
    const phrase = own.some(({ kind }) => kind === "storage") ? phrases.noNumber : phrases.noLimit;
    return [{ code: "no-storage-limit", phrase, gaps: kept(last - made) }, ...asWritten];
  }
  const beyond = limits.flatMap((note): SpokenNote[] => {
    const limit = exact(note.days ?? 0);
    const late = eaten.filter((day) => compareRatios(fraction(BigInt(day - made)), limit) > 0);
    return late.length === 0
      ? []
      : [
          {
            code: "kept-too-long",
            phrase: phrases.beyond,
            gaps: (language) => ({
              days: dayNames(days, late, language),
              ...kept(last - made)(language),
              limit: dayCount(limit, language),
              text: say(language, note.text),
            }),
            source: note.source,
          },
        ];
  });
  return [...beyond, ...asWritten];
}

const PHRASES: {
  readonly [how in "cooked" | "made"]: Readonly<Record<"noLimit" | "noNumber" | "beyond", string>>;
} = {
  cooked: {
    noLimit:
      "eaten up to {kept} after it is cooked, and the recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules",
    noNumber:
      "eaten up to {kept} after it is cooked, and the recipe gives no number of days that it keeps: follow what it says of storage, and local food-safety rules",
    beyond: "eaten on {days}, up to {kept} after it is cooked; the recipe gives {limit}: {text}",
  },
  made: {
    noLimit:
      "used up to {kept} after it is made, and its recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules",
    noNumber:
      "used up to {kept} after it is made, and its recipe gives no number of days that it keeps: follow what it says of storage, and local food-safety rules",
    beyond: "used on {days}, up to {kept} after it is made; its recipe gives {limit}: {text}",
  },
};
const NO_DAYS =
  "several portions for one person, and no days named: how long they are kept is not known, so follow local food-safety rules";

/** Days by name, the first few of many. */
function dayNames({ names }: Days, places: readonly number[], language: Language): string {
  const named = places.map((place) => names[place] ?? "");
  if (named.length <= MOST_NAMED) return named.join(", ");
  const list = named.slice(0, MOST_NAMED).join(", ");
  return say(language, "{list} and {count} more", { list, count: String(named.length - MOST_NAMED) });
}

const MOST_NAMED = 10;

function kept(days: number): Gaps {
  return (language) => ({ kept: dayCount(fraction(BigInt(days)), language) });
}

function dayCount(days: Exact, language: Language): string {
  const one = days.n === days.d;
  return one
    ? say(language, "1 day")
    : say(language, "{count} days", { count: showFigure(days, { language }) });
}

/** A dish's own notes, and those of nested recipes that are cooked in it. */
function notesIn(s: Sheet): readonly RecipeNote[] {
  const inner = s.plan.lines.flatMap(({ line, nested }) =>
    nested && line.added === "cooking" ? notesIn(nested) : [],
  );
  return [...(s.origin.notes ?? []), ...inner];
}
