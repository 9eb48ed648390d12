import { fault } from "../number/error.ts";
import { type Exact, exact, fraction, over, sum, times } from "../number/exact.ts";
import { floor } from "../number/ratio.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { Plan } from "../plan/planned.ts";
import type { PlanLine } from "../sheet/plan.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type BatchDraw, Draw } from "./draw.ts";
import { type Drawn, drawingOn, drawnBy, hasNested, RecipeKeys } from "./drawn.ts";
import { type EatingSpan, spansOf } from "./eating.ts";
import { plannedSheet } from "./lot.ts";
import { potsOf } from "./lots.ts";
import { MadeBatch } from "./madeBatch.ts";
import { exactBatch, measuredBatch } from "./measuredBatch.ts";
import type { ReadSchedule, ScheduledMeal } from "./read.ts";
import { linesAdded } from "./session.ts";
import { partOf } from "./vessel.ts";

/** Something that takes of a nested recipe, before it is known of which batch. */
interface Wanted extends Omit<BatchDraw, "grams" | "day"> {
  readonly place: number;
  readonly grams: Exact;
  readonly key: string;
  readonly taken: (draw: Draw) => void;
}

/** A nested recipe with all that draws on it. */
interface Pool {
  readonly key: string;
  readonly id: string;
  readonly nested: Sheet;
  /** How many levels of recipes are nested in it. */
  readonly height: number;
  readonly wanted: Wanted[];
  readonly batches: MadeBatch[];
}

/** What the pots of a dish take of batches on one day of cooking, by the number of the pot and the line of the dish. */
export type PotDraws = (pot: number) => ReadonlyMap<number, Draw>;

const NONE: ReadonlyMap<number, Draw> = /* @__PURE__ */ new Map();

/**
 * Nested recipes as batches of their own, pooled over every dish and day that draws on them. They are as
 * large as all that draws on them, then measured from the innermost out: each covers its draws, and what
 * draws on it has the composition that it was measured to.
 */
export class Batches {
  /** By day, what goes into others before them. */
  readonly all: readonly MadeBatch[];
  readonly #read: ReadSchedule;
  readonly #keys = new RecipeKeys();
  readonly #pools = new Map<string, Pool>();
  readonly #pots = new Map<string, Map<number, Draw>>();
  readonly #changed = new Set<MadeBatch>();
  readonly #variants = new Map<PlannedDish, { readonly base: Sheet; readonly dish: PlannedDish }[]>();
  readonly #bases = new Map<Sheet, Map<string, Sheet>>();

  constructor(plan: Plan, read: ReadSchedule) {
    this.#read = read;
    for (const scheduled of read.meals) {
      for (const dish of scheduled.dishes) if (hasNested(dish.base())) this.#want(scheduled, dish);
    }
    const pools = (): readonly Pool[] => [...this.#pools.values()];
    const highest = Math.max(0, ...pools().map(({ height }) => height));
    // What is nested deeper is asked for by what it is nested in.
    for (let height = highest; height >= 0; height -= 1) {
      for (const pool of pools().filter((each) => each.height === height)) this.#split(pool);
    }
    const kitchen = plan.kitchen();
    const inward = [...pools()].sort((a, b) => a.height - b.height);
    this.all = inward.flatMap(({ batches }) => batches).sort((a, b) => a.place().made - b.place().made);
    for (const pool of inward) for (const batch of pool.batches) this.#measure(pool, batch, kitchen);
  }

  /** The dish as it is made of the batches at hand when it is cooked, and when it is served. */
  dish(dish: PlannedDish, cooked: number, served: number): PlannedDish {
    if (this.#changed.size === 0 || !hasNested(dish.base())) return dish;
    const base = this.#drawing(dish.base(), cooked, served);
    const known = this.#variants.get(dish) ?? [];
    const found = known.find((each) => each.base === base) ?? { base, dish: dish.madeFrom(base) };
    if (!known.includes(found)) this.#variants.set(dish, [...known, found]);
    return found.dish;
  }

  /** What the pots of a dish take on a day of cooking; undefined where that is nothing. */
  draws(dish: PlannedDish, cooked: number): PotDraws | undefined {
    if (!hasNested(dish.base())) return undefined;
    return (pot) => this.#pots.get(potKey(dish, pot, cooked)) ?? NONE;
  }

  /** Sheets that draw on the same batches are one. */
  #drawing(base: Sheet, cooked: number, served: number): Sheet {
    const batches = base.plan.lines.map((own) => {
      const batch = this.#batchOf(own, own.line.added === "serving" ? served : cooked);
      return batch && this.#changed.has(batch) ? batch : undefined;
    });
    const key = batches.map((batch) => (batch ? this.all.indexOf(batch) : "")).join();
    const known = this.#bases.get(base) ?? new Map<string, Sheet>();
    this.#bases.set(base, known);
    const made = known.get(key) ?? drawingOn(base, (own) => batches[base.plan.lines.indexOf(own)]?.sheet);
    known.set(key, made);
    return made;
  }

  #batchOf({ source, nested }: PlanLine, day: number): MadeBatch | undefined {
    const batches = nested && this.#pools.get(this.#keys.of(source.id, nested))?.batches;
    return batches?.filter((batch) => batch.place().made <= day).at(-1);
  }

  #want({ eating, spans, who }: ScheduledMeal, dish: PlannedDish): void {
    const { meal, name } = dish;
    for (const span of spans.filter(({ eaten }) => eaten.length > 0)) {
      const counts = eating.counts(span.eaten);
      for (const { pot, group, number } of potsOf(dish)) {
        const own = new Map([...counts].filter(([person]) => pot.people.includes(person)));
        if (own.size === 0) continue;
        const sheet = plannedSheet({ dish, group, pot, counts: own, vessel: undefined });
        const key = potKey(dish, number, span.cooked);
        this.#ask(sheet, { meal, dish: name, place: span.cooked, into: "pot" }, (drawn, draw) => {
          const lines = this.#pots.get(key) ?? new Map<number, Draw>();
          this.#pots.set(key, lines.set(group.pot[drawn.line] ?? -1, draw));
        });
      }
      for (const { person, added } of dish.servings) {
        if (!added || !hasNested(added)) continue;
        const days = eating.daysOf(person, span.eaten);
        if (days.length === 0) continue;
        const each = fraction(eating.servings(person));
        const of = { ...who(person), dish: name };
        const apart = linesAdded(added, "cooking");
        const all = times(each, fraction(BigInt(days.length)));
        if (apart) this.#ask(partOf(apart, all), { ...of, place: span.cooked, into: "apart" });
        const serving = linesAdded(added, "serving");
        if (!serving) continue;
        for (const place of days) this.#ask(partOf(serving, each), { ...of, place, into: "serving" });
      }
    }
  }

  #ask(
    s: Sheet,
    at: Partial<Wanted> & Pick<Wanted, "place" | "into">,
    taken: (drawn: Drawn, draw: Draw) => void = () => undefined,
  ): void {
    for (const drawn of drawnBy(s)) {
      const key = this.#keys.of(drawn.id, drawn.nested);
      const known = this.#pools.get(key);
      const { id, nested } = drawn;
      const pool = known ?? { key, id, nested, height: heightOf(nested), wanted: [], batches: [] };
      this.#pools.set(key, pool);
      pool.wanted.push({
        ...{ meal: undefined, dish: undefined, recipe: undefined, person: undefined, ...at },
        ...{ key, line: drawn.key, grams: drawn.grams },
        taken: (draw) => taken(drawn, draw),
      });
    }
  }

  /** One batch for all that is taken from a day of making until the next. */
  #split({ key, id, nested, wanted, batches }: Pool): void {
    const { days, cook, vessel } = this.#read;
    const taken = [...new Set(wanted.map(({ place }) => place))].sort((a, b) => a - b);
    for (const { cooked, eaten } of this.#spansOf(id, nested, taken, cook(id))) {
      const own = wanted.filter(({ place }) => eaten.includes(place)).sort((a, b) => a.place - b.place);
      if (own.length === 0) continue;
      const grams = sum(own.map((each) => each.grams));
      const made = exactBatch(partOf(nested, over(grams, nested.masses.cooked)), vessel(id));
      const at = { place: cooked, lastDay: eaten.at(-1) ?? cooked, day: days.names[cooked] };
      const batch = new MadeBatch({ recipe: id, ...at, made });
      batches.push(batch);
      for (const { taken, grams, place, key: _, ...about } of own) {
        taken(new Draw(batch, grams, { ...about, day: days.names[place] }));
      }
      this.#ask(batch.exact, { recipe: id, place: cooked, into: "pot" }, ({ line }, draw) => {
        const of = batchKey(key, cooked);
        const lines = this.#pots.get(of) ?? new Map<number, Draw>();
        this.#pots.set(of, lines.set(line, draw));
      });
    }
  }

  #spansOf(
    id: string,
    nested: Sheet,
    taken: readonly number[],
    told: readonly number[] | undefined,
  ): readonly EatingSpan[] {
    if (!told) return whileItKeeps(taken, keepsFor(nested));
    const { spans, early } = spansOf(told, taken);
    if (early.length > 0) {
      const [first] = early;
      const day = this.#read.days.names[first ?? 0] ?? "";
      const hint = `make it on "${day}" or before, or leave it out of cook`;
      throw fault("schedule-malformed", `${nested.name} is used on "${day}", before it is first made`, hint, [
        "cook",
        id,
      ]);
    }
    return spans;
  }

  #measure({ key, id }: Pool, batch: MadeBatch, kitchen: ReturnType<Plan["kitchen"]>): void {
    if (!kitchen) return;
    const { made } = batch.place();
    const draws = this.#pots.get(batchKey(key, made)) ?? NONE;
    const exactSheet = this.#drawing(batch.exact, made, made);
    const caps = new Map([...draws].map(([line, draw]) => [line, draw.cap]));
    const measured = measuredBatch(exactSheet, { kitchen, caps, vessel: this.#read.vessel(id) });
    for (const [line, draw] of draws) draw.settle(measured.sheet.values.grams[line] ?? draw.exact);
    batch.becomes({ ...measured, exact: batch.exact });
    const isOther = exactSheet !== batch.exact || !measured.isAsAsked;
    if (isOther) this.#changed.add(batch);
  }
}

function potKey({ meal, name }: PlannedDish, pot: number, cooked: number): string {
  return JSON.stringify([meal, name, pot, cooked]);
}

function batchKey(recipe: string, made: number): string {
  return JSON.stringify([recipe, made]);
}

function heightOf({ plan }: Sheet): number {
  return plan.lines.reduce((all, { nested }) => (nested ? Math.max(all, 1 + heightOf(nested)) : all), 0);
}

/** How many days a recipe says that it keeps, whole; undefined where it does not say. */
function keepsFor({ origin }: Sheet): number | undefined {
  const days = (origin.notes ?? []).flatMap((note) => (note.days === undefined ? [] : [exact(note.days)]));
  return days.length === 0 ? undefined : Math.min(...days.map((each) => Number(floor(each))));
}

/** Makes it when it is first taken, and anew when it keeps no longer. */
function whileItKeeps(taken: readonly number[], days = Number.POSITIVE_INFINITY): readonly EatingSpan[] {
  const spans: { readonly cooked: number; readonly eaten: number[] }[] = [];
  for (const place of taken) {
    const last = spans.at(-1);
    if (last && place <= last.cooked + days) last.eaten.push(place);
    else spans.push({ cooked: place, eaten: [place] });
  }
  return spans;
}
