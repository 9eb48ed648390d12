import type { State } from "../food/food.ts";
import type { Amount } from "../measure/amount.ts";
import type { Kitchen } from "../measure/kitchen.ts";
import { type Exact, equals, fraction, isZero, ONE, over, sum, ZERO } from "../number/exact.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { lineTotals } from "./share/batch.ts";
import type { Eater, Group, KitchenNote } from "./share/groups.ts";
import { withAmounts } from "./share/lines.ts";
import { PotServing, Subsets } from "./share/serving.ts";
import { groupsOf } from "./share/whoSharesAPot.ts";

/** Held lines that stand to the rest of a pot otherwise than in the recipe. */
export interface PotRatio {
  /** The part that they are; of lines without one, the first line's key. */
  readonly part: string;
  readonly lines: readonly string[];
  /** Their ratio to the rest over what the recipe has: 1.25 is a quarter more. */
  readonly ratio: Exact;
}

/** What is cooked once, for all who eat of it. */
export interface Pot {
  /** All that goes in, and no other line; its portions are the people. */
  readonly sheet: Sheet;
  readonly people: readonly string[];
  /** Where it leaves the recipe's own ratios, before a kitchen measures it; empty where it keeps them all. */
  readonly ratios: readonly PotRatio[];
  /** What a cook should know of its measured amounts; empty where no kitchen was given. */
  readonly notes: readonly KitchenNote[];
}

/**
 * Why a line is not in the pot: it is added at serving; it is the same for everyone, while shares of
 * the pot are not; or it keeps no ratio to the pot, since it was fitted to each person.
 */
export type ApartWhy = "serving" | "per-portion" | "adjustable";

/** Something that is weighed out for one person alone. */
export interface Addition {
  readonly line: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly why: ApartWhy;
  /** Whether the recipe cooks it: it is then cooked for this person, apart or in their share. */
  readonly cooked: boolean;
  /** As the recipe writes it, or as a kitchen measured it. */
  readonly amount: Amount;
  /** What `amount` is of: the edible portion, or the food as purchased, before it is trimmed. */
  readonly weighed: "edible" | "as-purchased";
  /** Edible portion. */
  readonly grams: Exact;
}

/** One person's part of a dish: a share of a pot, and what is added to it. */
export interface Serving {
  readonly person: string;
  /** Nothing where nothing is cooked for more than this person. */
  readonly pot: Pot | undefined;
  /** Of the pot as cooked, 0 to 1. */
  readonly share: Exact;
  /** The share by mass, as cooked. */
  readonly grams: Exact;
  /** The share as the kitchen's scale shows it, where it is weighed out. */
  readonly weighed: Amount | undefined;
  /** Whether this person gets what the others leave, which is no whole number of the scale's steps. */
  readonly isRest: boolean;
  /** The share by volume, where the dish's density is given. */
  readonly millilitres: Exact | undefined;
  /** Keys of lines that a kitchen measured for this person alone: what is added, and a pot of one's own. */
  readonly measured: readonly string[];
  /** What this person measures with: their own kitchen, else the plan's. */
  readonly kitchen: Kitchen | undefined;
  /** What is added, as a sheet for this one portion; nothing where nothing is. */
  readonly added: Sheet | undefined;
  readonly additions: readonly Addition[];
}

/** A dish, apart into what is cooked once and what is added person by person. */
export interface Parted {
  readonly groups: readonly Group[];
  readonly pots: readonly Pot[];
  readonly servings: readonly Serving[];
}

/**
 * Parts a dish; `base` is one portion as written, `density` in g/ml of the pot as cooked. `settled`
 * groups stay together as they are.
 */
export function partDish(
  base: Sheet,
  eaters: readonly Eater[],
  density: Exact | undefined,
  settled?: readonly Group[],
): Parted {
  const groups = settled ?? groupsOf(base, eaters);
  const subsets = new Subsets(base);
  const parted = groups.map((group) => partGroup(base, group, subsets, density));
  const order = new Map(eaters.map(({ person }, i) => [person, i]));
  const place = ({ person }: Serving): number => order.get(person) ?? 0;
  return {
    groups,
    pots: parted.flatMap(({ pot }) => pot ?? []),
    servings: parted.flatMap(({ servings }) => servings).sort((a, b) => place(a) - place(b)),
  };
}

function partGroup(
  base: Sheet,
  group: Group,
  subsets: Subsets,
  density: Exact | undefined,
): { readonly pot: Pot | undefined; readonly servings: readonly Serving[] } {
  const { eaters, by } = group;
  const pot = by === undefined ? undefined : potOf(base, group, subsets);
  const shared = (eater: Eater): Exact => (by === undefined ? ZERO : (eater.factors[by] ?? ZERO));
  const whole = sum(eaters.map(shared));
  const cooked = pot?.sheet.masses.cooked ?? ZERO;
  return {
    pot,
    servings: eaters.map((eater) => {
      const share = isZero(whole) ? ZERO : over(shared(eater), whole);
      return new PotServing({ eater, base, group, subsets, pot, share, cooked, density });
    }),
  };
}

function potOf(base: Sheet, { eaters, pot: lines, measured }: Group, subsets: Subsets): Pot {
  const totals = lineTotals(eaters, base.plan.lines.length);
  const factors = lines.map((line) => totals[line] ?? ZERO);
  const sheet = withAmounts(
    moveLines(subsets.get(lines), factors, fraction(BigInt(eaters.length))),
    measured && lines.map((line) => measured.amounts[line]),
  );
  return {
    sheet,
    people: eaters.map(({ person }) => person),
    ratios: ratiosOf(base, measured?.before ?? eaters),
    notes: measured?.notes ?? [],
  };
}

/** Held lines by how they left the first line of the base; whoever shares a pot has left it alike. */
function ratiosOf(base: Sheet, eaters: readonly Eater[]): readonly PotRatio[] {
  const held = base.plan.lines.flatMap(({ line }, i) =>
    line.added === "cooking" && line.scaling === "held"
      ? [{ line, factor: eaters[0]?.factors[i] ?? ZERO }]
      : [],
  );
  const to = held.find(({ line, factor }) => line.part === undefined && !isZero(factor)) ?? held[0];
  if (!to || isZero(to.factor)) return [];
  const moved = new Map<string, PotRatio>();
  for (const { line, factor } of held) {
    const ratio = over(factor, to.factor);
    if (equals(ratio, ONE)) continue;
    const part = line.part ?? line.key;
    const lines = [...(moved.get(part)?.lines ?? []), line.key];
    moved.set(part, { part, lines, ratio });
  }
  return [...moved.values()];
}
