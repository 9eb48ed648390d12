import { type Language, say } from "../document/language.ts";
import { withExact } from "../measure/amount.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { isZero, minus, ONE, over } from "../number/exact.ts";
import type { KitchenNote } from "../plan/share/groups.ts";
import { notesOn } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { shownAmount } from "../sheet/stated.ts";
import { keepingNotes } from "./keeping.ts";
import type { DishPot, DishSession } from "./session.ts";
import type { VesselUse } from "./vessel.ts";

/**
 * What a note is about. Room: `several-runs`, `overflows`, `volume-not-known`, `volume-by-lines`. The
 * batch: `large-factor`, `per-portion-in-pot` (a question of the plan that is still open). Keeping:
 * `kept-too-long`, `no-storage-limit`, `keeping-not-known`. In the recipe's own words: `storage`,
 * `cooling`, `reheating`, `safety`. Of the schedule: `nothing-to-cook`, `cooked-on-the-day`, `fitted-apart` (pots that
 * there are only because someone was fitted in other ratios on another day). Of amounts that the plan's kitchen
 * measures: `measured` (what that costs in ratios), `off-target` (whose demand it costs more than the
 * tolerance), and those of a plan's own pots.
 */
export type CookingNoteCode =
  | "several-runs"
  | "overflows"
  | "volume-not-known"
  | "volume-by-lines"
  | "large-factor"
  | "per-portion-in-pot"
  | "kept-too-long"
  | "no-storage-limit"
  | "keeping-not-known"
  | "storage"
  | "cooling"
  | "reheating"
  | "safety"
  | "nothing-to-cook"
  | "cooked-on-the-day"
  | "fitted-apart"
  | "measured"
  | KitchenNote["code"];

/** Something that a cook should know. Never an error. */
export interface CookingNote {
  readonly code: CookingNoteCode;
  /** The days of cooking that it speaks of; empty where the schedule names no days. */
  readonly days: readonly string[];
  /** Undefined where it speaks of a nested recipe. */
  readonly meal: string | undefined;
  /** Nothing where it speaks of all the meal's. */
  readonly dish: string | undefined;
  /** The nested recipe that it speaks of, by its id. */
  readonly recipe?: string;
  readonly text: string;
  /** As the recipe gives it. */
  readonly source: string | undefined;
}

/** What fills a phrase's gaps in a language. */
export type Gaps = (language: Language) => { readonly [name: string]: string };

/** A note before it is said in a language. */
export interface SpokenNote {
  readonly code: CookingNoteCode;
  readonly phrase: string;
  readonly gaps?: Gaps;
  readonly source?: string | undefined;
}

/** What a cook should know of one session. */
export function sessionNotes(session: DishSession, language: Language): readonly CookingNote[] {
  const { pots, day, meal, dish } = session;
  const said: readonly SpokenNote[] = [
    ...pots.flatMap((pot) => [...roomNotes(pot), ...largeNotes(pot), ...measuredNotes(pot)]),
    ...apartNotes(session),
    ...session.made().dish.questions.map(({ code, text }): SpokenNote => ({ code, phrase: text })),
    ...keepingNotes(session),
  ];
  const days = day === undefined ? [] : [day];
  const notes = said.map(({ code, phrase, gaps, source }): CookingNote => {
    return { code, days, meal, dish, text: say(language, phrase, gaps?.(language)), source };
  });
  // Several pots of a dish may have the same to say.
  return merged([...notes, ...lostNotes(session, days, language)]);
}

/** Notes that stand under the pot that they speak of. */
export const OF_A_POT: ReadonlySet<CookingNoteCode> = /* @__PURE__ */ new Set<CookingNoteCode>([
  "measured",
  "not-measurable",
  "not-proven",
  "shares-exact",
]);

/** What measuring a pot costs, and what could not be measured. */
export function measuredNotes(pot: DishPot): readonly SpokenNote[] {
  return costNotes(pot, pot.made().dish.base());
}

type Measured = Pick<DishPot, "sheet" | "exact" | "drift" | "kitchenNotes">;

/** The same of what is made by these lines. */
export function costNotes(
  { sheet, exact, drift, kitchenNotes }: Measured,
  lines: Sheet,
): readonly SpokenNote[] {
  const moved: readonly SpokenNote[] = drift
    ? [
        {
          code: "measured",
          phrase: drift.drift.n === 0n ? MEASURED_ALIKE : MEASURED,
          gaps: (language) => ({
            cooked: showFigure(sheet.masses.cooked, { unit: "g", language }),
            planned: showFigure(exact.masses.cooked, { unit: "g", language }),
            line: say(language, nameOf(lines, drift.line)),
            drift: `${drift.drift.n > 0n ? "+" : ""}${showPercent(drift.drift, { significant: 2, language })}`,
          }),
        },
      ]
    : [];
  return [...moved, ...kitchenNotes.map(({ code, text }): SpokenNote => ({ code, phrase: text }))];
}

const MEASURED_ALIKE =
  "rounded to what the kitchen can measure: {cooked} as cooked, where {planned} was planned, in the same ratios";
const MEASURED =
  "rounded to what the kitchen can measure: {cooked} as cooked, where {planned} was planned; against the rest {line} moves most, by {drift}";

function nameOf({ plan }: Sheet, key: string): string {
  return plan.lines.find(({ line }) => line.key === key)?.source.name ?? key;
}

/** Pots of what is cooked once that no meal of it needs by itself. */
function apartNotes(session: DishSession): readonly SpokenNote[] {
  const { dish, lots, who, nameOf } = session.made();
  const used = dish.pots
    .map((pot) => [...lots.counts(pot).keys()].map((eater) => who(eater)))
    .filter((eaters) => eaters.length > 0);
  const potsWith = (is: (eater: ReturnType<typeof who>) => boolean): number =>
    used.filter((eaters) => eaters.some(is)).length;
  const eaters = used.flat();
  const needed = Math.max(0, ...session.meals.map((own) => potsWith(({ meal }) => meal === own)));
  const people = [...new Set(eaters.map(({ person }) => person))].filter(
    (own) => potsWith(({ person }) => person === own) > 1,
  );
  if (people.length === 0 || used.length <= needed) return [];
  const gaps = {
    people: people.map(nameOf).join(", "),
    pots: String(used.length),
    needed: String(needed),
  };
  return [{ code: "fitted-apart", phrase: FITTED_APART, gaps: () => gaps }];
}

const FITTED_APART =
  "{pots} pots where {needed} would do on any one day, since {people} were fitted in other ratios on other days: plan again with what they are served first kept in the others, too";

/** Whose demands measuring costs more than the tolerance, of the whole meal. */
function lostNotes(
  session: DishSession,
  days: readonly string[],
  language: Language,
): readonly CookingNote[] {
  const { drifts, meal } = session;
  return drifts.flatMap(({ person, lost }) =>
    lost.map(({ of, asked }): CookingNote => {
      const gaps = {
        person: session.made().nameOf(session.made().who(person).person),
        demand: say(language, of),
        asked,
      };
      return {
        code: "off-target",
        days,
        meal,
        dish: undefined,
        text: say(language, LOST, gaps),
        source: undefined,
      };
    }),
  );
}

const LOST =
  "{person}: {demand} {asked}: off by more than the tolerance in what the kitchen can measure of it";

/** Each note once, with all the days that it speaks of. */
export function merged(notes: readonly CookingNote[]): readonly CookingNote[] {
  const found = new Map<string, { readonly note: CookingNote; readonly days: Set<string> }>();
  for (const note of notes) {
    const { code, meal, dish, recipe, text, source } = note;
    const key = JSON.stringify([code, meal, dish, recipe, text, source]);
    const days = found.get(key)?.days ?? new Set();
    for (const day of note.days) days.add(day);
    if (!found.has(key)) found.set(key, { note, days });
  }
  return [...found.values()].map(({ note, days }) => ({ ...note, days: [...days] }));
}

/** Whether it goes into its vessel. */
export function roomNotes({ vessel, runs }: Pick<DishPot, "vessel" | "runs">): readonly SpokenNote[] {
  if (!vessel) return [];
  const { fit, silent, by } = vessel;
  const gaps =
    (more: Gaps = () => ({})): Gaps =>
    (language) => ({ ...sizes(vessel, language), ...more(language) });
  const byLines: readonly SpokenNote[] =
    by === "lines" && fit !== "not-known" ? [{ code: "volume-by-lines", phrase: BY_LINES }] : [];
  switch (fit) {
    case "fits":
      return byLines;
    case "not-known":
      return [
        {
          code: "volume-not-known",
          phrase: NOT_KNOWN,
          gaps: gaps((language) => ({ lines: silent.map((name) => say(language, name)).join("; ") })),
        },
      ];
    case "overflows":
      return [{ code: "overflows", phrase: OVERFLOWS, gaps: gaps() }, ...byLines];
    case "several": {
      const [first, rest] = runs;
      const count: Gaps = (language) => ({
        count: showFigure(first?.count ?? ONE, { language }),
      });
      return [{ code: "several-runs", phrase: rest ? FULL : SEVERAL, gaps: gaps(count) }, ...byLines];
    }
  }
}

const SEVERAL = "{count} equal runs, since {needs} is more than the {capacity} that it holds";
const FULL = "full runs ({count}) and a rest, since {needs} is more than the {capacity} that it holds";
const OVERFLOWS =
  "{needs} is more than the {capacity} that it holds, by {excess}, and only one run is allowed: take a larger vessel, or make several runs";
const NOT_KNOWN =
  "whether it goes into {capacity} is not known, since nothing says the volume of {lines}: give the dish a density, those lines a volume, or the vessel a weight that it may hold";
const BY_LINES =
  "its volume is added up line by line, and a mix mostly takes less (common practice, no source)";

function sizes({ capacity, needs }: VesselUse, language: Language): ReturnType<Gaps> {
  const shown = (of: VesselUse["capacity"]): string => shownAmount(of, undefined, language);
  const excess = needs && withExact(capacity, minus(needs.value, capacity.value));
  return {
    capacity: shown(capacity),
    needs: needs ? shown(needs) : "",
    excess: excess ? shown(excess) : "",
  };
}

const LARGE = "{factor} times the recipe as written: {text}";
const LARGE_RUN = "a run of {factor} times the recipe as written: {text}";

/** Times, pans and the like are those of the batch as it was written, and what counts is what is cooked at once. */
export function largeNotes({ runs }: Pick<DishPot, "runs">): readonly SpokenNote[] {
  for (const { sheet } of runs) {
    const written = asWritten(sheet);
    const [note] = notesOn(written, sheet).filter(({ code }) => code === "large-factor");
    if (!note || isZero(written.masses.raw)) continue;
    const factor = over(sheet.masses.raw, written.masses.raw);
    return [
      {
        code: "large-factor",
        phrase: runs.length > 1 || !runs[0]?.count.eq(1) ? LARGE_RUN : LARGE,
        gaps: (language) => ({ factor: showFigure(factor, { language }), text: say(language, note.text) }),
      },
    ];
  }
  return [];
}

/** The same lines in the amounts that the recipe's document gives. */
function asWritten(s: Sheet): Sheet {
  const grams = s.plan.lines.map(({ line, reader }) => reader.toGrams(reader.read(line.amount)).grams);
  return s.version({ ...s.values, grams });
}
