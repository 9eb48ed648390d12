import type { ComponentId } from "../../food/components.ts";
import type { FoodCaution } from "../../food/food.ts";
import { fault, quote } from "../../number/error.ts";
import { type Exact, exact, isZero, over, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { Result } from "../../number/result.ts";
import type { Ends } from "../../sheet/ends.ts";
import type { Bound, Tally } from "../../sheet/tally.ts";
import { authorities } from "../intakes/authority.ts";
import { isAcceptable } from "../intakes/figures.ts";
import {
  countsFood,
  isIntakes,
  type ReferenceIntakes,
  referenceIntakes,
} from "../intakes/referenceIntakes.ts";
import type { UpperFigure } from "../intakes/resolve.ts";
import type { Authority } from "../intakes/table.ts";
import { personFacts } from "../readPerson.ts";
import { type Dose, type Eaten, readEaten } from "./eaten.ts";
import { type LevelVerdict, verdictOn } from "./verdict.ts";

/** One person's level of what a dose brings. */
export interface DoseFor {
  readonly who: string;
  readonly level: UpperFigure;
  /** Whose level it is. */
  readonly authority: Authority;
  /**
   * Set where that is another authority than the person's, which has a level of it but none at their age:
   * the lowest that another publishes for them stands here, to help whoever is asked.
   */
  readonly noLevelBy?: Authority;
  /** Of the whole day's level; nothing where nothing is known. */
  readonly share: Exact | undefined;
  /** Between what the share can lie, by the ends of ranged figures: nothing for the most where no limit is known. */
  readonly least: Exact;
  readonly most: Exact | undefined;
  readonly bound: Bound;
  /**
   * `past`: above the day's level, by this line alone and at the least. `may-be-past`: what is told reaches
   * above it. `under` is proven, too, at the most. `not-proven`: only what is not told could be above.
   */
  readonly verdict: LevelVerdict;
  /** What the dose brings for each kilogram of this person, by the amount's value. */
  readonly perKg: Exact | undefined;
  /**
   * Of a plan of several days, whose mean the level judges: ids of those whose doses are above it by
   * themselves, what is eaten besides counted in. Empty otherwise.
   */
  readonly days: readonly string[];
}

/** What a line that is the same for everyone brings of a component that has an upper level. */
export interface DoseRow {
  readonly line: string;
  readonly name: string;
  /** Of the line, in one portion. */
  readonly grams: Exact;
  readonly of: ComponentId;
  readonly amount: Tally;
  /** Everyone who has a level, of another authority where theirs has none at their age; the one it weighs most on first. */
  readonly people: readonly [DoseFor, ...DoseFor[]];
  /** Whom it takes furthest towards their level; of equals the lightest. */
  readonly riskiest: string;
  /** What the line's foods say to heed: all of it, for a code does not tell which component it speaks of. */
  readonly cautions: readonly FoodCaution[];
  /** Everyone whom it was checked for, those without any level counted in: of theirs, nobody can say. */
  readonly checked: readonly string[];
}

/** Someone whom doses are checked for. */
export interface DoseEater {
  readonly id: string;
  readonly name: string;
}

/** Lines that are the same for everyone, held against each person's upper levels. */
export class DoseCheck extends Result {
  readonly is = "steelyard/doses@1";
  readonly rows: readonly DoseRow[];
  /** Rows that alone pass somebody's level for a whole day, proven. */
  readonly past: readonly DoseRow[];
  /** Rows that are past nobody's level for certain, but reach above somebody's by what is told. */
  readonly mayBePast: readonly DoseRow[];
  /** Rows that are past nobody's level for certain, and not proven under everyone's: those of `mayBePast`, too. */
  readonly notProven: readonly DoseRow[];
  /** Of the dish or dishes. */
  readonly name: string;
  readonly #who: readonly DoseEater[];

  /** @internal Use {@link doseCheck}. */
  constructor(name: string, who: readonly DoseEater[], rows: readonly DoseRow[]) {
    super();
    this.name = name;
    this.#who = who;
    this.rows = [...rows].sort((a, b) => weight(b) - weight(a));
    this.past = this.rows.filter(({ people }) => people.some(({ verdict }) => verdict === "past"));
    const open = this.rows.filter((row) => !this.past.includes(row));
    this.mayBePast = open.filter(({ people }) => people.some(({ verdict }) => verdict === "may-be-past"));
    this.notProven = open.filter(({ people }) => people.some(({ verdict }) => verdict !== "under"));
  }

  override toString(): string {
    const past = this.past.map(({ name }) => name).join(", ");
    return `${this.name}: ${this.rows.length} fixed doses; ${past === "" ? "none alone past a level" : `past a level: ${past}`}`;
  }

  /** @internal Who eats them. */
  who(): readonly DoseEater[] {
    return this.#who;
  }
}

/**
 * Checks the lines that are the same for everyone (`scaling: "per-portion"`) against upper levels: one
 * size for all weighs most on the smallest. Each line is held by itself against the level of a whole
 * day, person by person, in the terms that the level counts; what else is eaten comes on top of it
 * (`compareRatios`). What the line's foods say to heed stands with it: a figure that is not known, or
 * varies as seaweed's iodine does, is no reason to be easy. A figure that is published as a range is held
 * with both its ends.
 *
 * No level at an age is no leave: where a person's authority has a level for others only, the lowest
 * that another authority publishes for them stands in and says so (`noLevelBy`).
 *
 * `who` is one person's intakes, or several people's by name.
 *
 * Throws `comparison-malformed`.
 *
 * @example
 * ```ts
 * const soup = sheet(
 *   {
 *     name: "Liver broth",
 *     portions: 1,
 *     lines: [
 *       { key: "water", food: "water-tap", amount: "250 g" },
 *       { key: "liver", food: "beef-liver-braised", amount: "40 g", scaling: "per-portion" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const girl: Person = { sex: "female", age: 15, mass: "48 kg" };
 * const man: Person = { sex: "male", age: 27, mass: "92 kg" };
 * const doses = doseCheck(soup, { cox: referenceIntakes("eu", girl), stroke: referenceIntakes("eu", man) });
 * doses.past.map(({ line, of, riskiest }) => `${line}: ${of}, above all for ${riskiest}`); // => [ 'liver: retinol, above all for cox', 'liver: copper, above all for cox' ]
 * ```
 */
export function doseCheck(
  eaten: Eaten,
  who: ReferenceIntakes | { readonly [name: string]: ReferenceIntakes },
): DoseCheck {
  const portion = readEaten(eaten, "comparison-malformed");
  const people = readPeople(who);
  return new DoseCheck(
    portion.name,
    people.map(({ id }) => ({ id, name: id })),
    doseRows(portion.doses, people),
  );
}

/** Someone's levels and mass, to hold doses against. */
export interface DosedPerson {
  readonly id: string;
  readonly levels: ReadonlyMap<ComponentId, Level>;
  readonly mass: Exact;
}

type Level = Pick<DoseFor, "level" | "authority" | "noLevelBy">;

/** Reads someone's levels, once for all doses. */
export function dosedPerson(id: string, intakes: ReferenceIntakes, mass: Exact): DosedPerson {
  return { id, levels: new Map([...lentLevels(intakes), ...levelsOf(intakes)]), mass };
}

/** What each dose of a portion brings, held against the levels of everyone who gets it. */
export function doseRows(doses: readonly Dose[], people: readonly DosedPerson[]): readonly DoseRow[] {
  const levels = new Map<ComponentId, [DosedPerson, Level][]>();
  for (const one of people) {
    for (const [of, level] of one.levels) {
      const all = levels.get(of);
      if (all) all.push([one, level]);
      else levels.set(of, [[one, level]]);
    }
  }
  const checked = people.map(({ id }) => id);
  return doses.flatMap((dose) => rowsOf(dose, levels, checked));
}

function readPeople(who: unknown): DosedPerson[] {
  const entries = isIntakes(who)
    ? [["this person", who] as const]
    : typeof who === "object" && who !== null
      ? Object.entries(who)
      : [];
  const hint = 'give referenceIntakes("uk", person), or several by name';
  if (entries.length === 0) throw fault("comparison-malformed", "there is nobody to check for", hint);
  return entries.map(([name, intakes]: readonly [string, unknown]) => {
    if (!isIntakes(intakes)) {
      throw fault("comparison-malformed", `${quote(name)} is not a person's intakes`, hint, [name]);
    }
    return dosedPerson(name, intakes, personFacts(intakes.person).mass);
  });
}

/** One row for each component that somebody has a level of, those that the dose brings none of left out. */
function rowsOf(
  dose: Dose,
  levels: ReadonlyMap<ComponentId, readonly (readonly [DosedPerson, Level])[]>,
  checked: readonly string[],
): DoseRow[] {
  return [...levels].flatMap(([of, all]): DoseRow[] => {
    const amount = dose.brings(of);
    if (amount.bound === "point" && isZero(amount.value)) return [];
    const held = heldBy(dose, of, all);
    const [first, ...rest] = held;
    if (!first) return [];
    const { key: line, name, cautions } = dose;
    const grams = dose.grams;
    const row = { line, name, grams, of, amount, cautions, checked };
    return [{ ...row, people: [first, ...rest], riskiest: first.who }];
  });
}

/** The lowest level of each single component that counts what food brings. */
function levelsOf(
  { authority, get, components }: ReferenceIntakes,
  ids: readonly ComponentId[] = components,
): ReadonlyMap<ComponentId, Level> {
  const found = new Map<ComponentId, Level>();
  for (const id of ids) {
    for (const level of get(id).uppers) {
      const [of, ...others] = level.of;
      if (of === undefined || others.length > 0 || !countsFood(level) || isAcceptable(level)) continue;
      const before = found.get(of)?.level;
      if (!before || level.value.lt(before.value)) found.set(of, { level, authority });
    }
  }
  return found;
}

/** The lowest that other authorities have of what a person's own has for people of another age alone. */
function lentLevels({ authority, person, withoutUpper }: ReferenceIntakes): ReadonlyMap<ComponentId, Level> {
  const ids = withoutUpper.filter(({ forOthers }) => forOthers).map(({ of }) => of);
  const found = new Map<ComponentId, Level>();
  if (ids.length === 0) return found;
  for (const other of authorities.filter((each) => each !== authority)) {
    for (const [of, own] of levelsOf(referenceIntakes(other, person), ids)) {
      const before = found.get(of)?.level;
      const isHarm = own.level.kind !== "CDRR";
      if (isHarm && (!before || own.level.value.lt(before.value)))
        found.set(of, { ...own, noLevelBy: authority });
    }
  }
  return found;
}

/**
 * Everyone against their level, whom it weighs most on first, of equals the lightest. Many share a
 * level, and what a dose comes to is then reckoned once for them.
 */
function heldBy(
  dose: Dose,
  of: ComponentId,
  all: readonly (readonly [DosedPerson, Level])[],
): readonly DoseFor[] {
  const [amount, ends] = [dose.brings(of), dose.ends(of)];
  const known = amount.bound !== "unknown";
  const byValue = new Map<string, Against>();
  const against = (level: UpperFigure): Against => {
    const key = level.value.toJSON();
    const made = byValue.get(key) ?? hold(amount, ends, exact(level.value));
    byValue.set(key, made);
    return made;
  };
  const held = all.map(([one, own]) => ({ one, own, against: against(own.level) }));
  const place = placesOf([...byValue.values()]);
  return held
    .sort(
      (a, b) =>
        (place.get(a.against) ?? 0) - (place.get(b.against) ?? 0) || compareRatios(a.one.mass, b.one.mass),
    )
    .map(({ one: { id, mass }, own, against: share }) => ({
      who: id,
      ...own,
      ...share,
      bound: amount.bound,
      perKg: known ? over(amount.value, mass) : undefined,
      days: dose.daysPast?.(of, exact(own.level.value)) ?? [],
    }));
}

/** The place of each by share, the largest first; equals share theirs. */
function placesOf(all: readonly Against[]): ReadonlyMap<Against, number> {
  const falling = [...all].sort((a, b) => compareRatios(shareOr0(b), shareOr0(a)));
  const places = new Map<Against, number>();
  let place = 0;
  falling.forEach((each, i) => {
    const before = falling[i - 1];
    if (before && compareRatios(shareOr0(before), shareOr0(each)) !== 0) place = i;
    places.set(each, place);
  });
  return places;
}

function shareOr0({ share }: Against): Exact {
  return share ?? ZERO;
}

type Against = Pick<DoseFor, "share" | "least" | "most" | "verdict">;

function hold(amount: Tally, ends: Ends, whole: Exact): Against {
  const { low = ZERO, high } = ends;
  const share = amount.bound === "unknown" ? undefined : over(amount.value, whole);
  return {
    share,
    least: over(low, whole),
    most: high && over(high, whole),
    verdict: verdictOn(ends, whole),
  };
}

/** Rows in which nothing is known come first: they may be the worst. A range counts with its high end. */
function weight({ people: [{ share, most }] }: DoseRow): number {
  return share === undefined ? Number.MAX_VALUE : Number(most ?? share);
}
