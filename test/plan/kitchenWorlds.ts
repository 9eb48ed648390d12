import fc from "fast-check";
import type { Kitchen } from "../../src/measure/kitchen.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, over, sum, times } from "../../src/number/exact.ts";
import type { PersonInput, PlanInput, PortionDemands } from "../../src/plan/input.ts";
import type { LineInput, RecipeInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { build, places, worlds } from "../scale/round/dishes.ts";

/** Random plans for kitchens: a meal of one or two dishes, up to four people who want different things. */

const scaling = fc.constantFrom(
  "held" as const,
  "held" as const,
  "held" as const,
  "adjustable" as const,
  "per-portion" as const,
);
const added = fc.constantFrom("cooking" as const, "cooking" as const, "serving" as const);
const turns = fc.array(fc.record({ scaling, added, part: fc.constantFrom(undefined, undefined, "grain") }), {
  minLength: 6,
  maxLength: 6,
});

const dish: fc.Arbitrary<RecipeInput> = fc
  .tuple(worlds({ lines: { min: 1, max: 5 }, demands: { min: 0, max: 0 } }), turns)
  .map(([{ recipe }, turned]) => {
    const { cookedMass: _, ...rest } = recipe;
    const lines = recipe.lines.map((line, i): LineInput => {
      const turn = turned[i];
      if (!turn || i === 0 || line.scaling === "per-portion") return line;
      const isHeld = turn.scaling === "held" && turn.part !== undefined;
      const part = isHeld ? { part: turn.part ?? "grain" } : {};
      return { ...line, scaling: turn.scaling, added: turn.added, ...part };
    });
    return { ...rest, lines };
  });

interface Wish {
  readonly kind: "factor" | "energy" | "mass" | "nothing" | "list";
  /** Hundredths of one portion as written. */
  readonly size: number;
  readonly limit: "sodium" | "energy" | "protein" | "fat-share";
  readonly room: number;
  readonly own: number;
}

const wish: fc.Arbitrary<Wish> = fc.record({
  kind: fc.constantFrom("factor", "energy", "mass", "nothing", "list", "list"),
  size: fc.integer({ min: 40, max: 260 }),
  limit: fc.constantFrom("sodium", "energy", "protein", "fat-share"),
  room: fc.constantFrom(0, 0, 1, 3, 10),
  own: fc.integer({ min: 0, max: places.length * 2 }),
});

/** What sheets eaten together bring of a subject, one portion of each, by their public figures alone. */
export function figureOf(
  sheets: readonly Sheet[],
  subject: Pick<Demand, "of" | "energyShareOf" | "ratioOf">,
): Exact | null {
  const all = (of: "energy" | "protein" | "fat" | "carbohydrateByDifference" | "sodium"): Exact =>
    sum(sheets.map((s) => s.portion(of).value));
  if (subject.of === "mass") return sum(sheets.map((s) => over(s.masses.cooked, s.values.portions)));
  if (subject.of === "energy" || subject.of === "protein" || subject.of === "sodium") return all(subject.of);
  // General factors, 4, 9 and 4 kcal/g: FAO Food and Nutrition Paper 77 (2003), 3.5.
  const fat = times(exact(9), all("fat"));
  const whole = sum([fat, times(exact(4), all("protein")), times(exact(4), all("carbohydrateByDifference"))]);
  return whole.n === 0n ? null : over(fat, whole);
}

function demandsFor(sheets: readonly Sheet[], { kind, size, limit, room }: Wish): PortionDemands | undefined {
  const part = fraction(BigInt(size), 100n);
  const of = (id: "energy" | "mass" | "protein" | "sodium"): Exact =>
    times(figureOf(sheets, { of: id }) ?? exact(1), part);
  const show = (f: Exact): string => exactText(f);
  if (kind === "nothing") return undefined;
  if (kind === "factor") return { factor: show(part) };
  if (kind === "energy" || kind === "mass") return { [kind]: show(of(kind)) };
  const up = fraction(BigInt(100 + room), 100n);
  const share = figureOf(sheets, { energyShareOf: "fat" }) ?? exact(1);
  const firm: Demand =
    limit === "fat-share"
      ? { energyShareOf: "fat", most: show(share.n >= share.d ? exact(1) : share), firm: true }
      : { of: limit, most: show(times(of(limit), up)), firm: true };
  return [{ of: "energy", exactly: show(of("energy")) }, { of: "mass", least: show(of("mass")) }, firm];
}

export interface PlanWorld {
  readonly input: PlanInput;
  readonly place: Kitchen;
  readonly kitchenOf: (person: string) => Kitchen;
}

/** Kitchens are the plan's, or someone's own. */
export const planWorlds: fc.Arbitrary<PlanWorld> = fc
  .record({
    dishes: fc.array(dish, { minLength: 1, maxLength: 2 }),
    place: fc.constantFrom(...places),
    wishes: fc.array(wish, { minLength: 1, maxLength: 4 }),
    tolerance: fc.constantFrom("2 %", "0.005", "0.1"),
    pots: fc.constantFrom("exact" as const, "exact" as const, { tolerance: "5 %" }),
  })
  .map(({ dishes, place, wishes, tolerance, pots }) => {
    const sheets = dishes.map(build);
    const people = wishes.map((each, i): PersonInput => {
      const demands = demandsFor(sheets, each);
      const kitchen = places[each.own];
      return { id: `p${i}`, ...(demands && { demands }), ...(kitchen && { kitchen }) };
    });
    const [only, second] = sheets;
    const meal = second && only ? { pot: only, side: second } : (only as Sheet);
    return {
      input: {
        meals: [{ id: "meal", dishes: meal }],
        people,
        pots,
        kitchen: place,
        tolerance,
        silent: "accept",
      },
      place,
      // A counterexample as a cook would write it down.
      [fc.toStringMethod]: () =>
        JSON.stringify({ dishes, people, place: place.name, tolerance, pots }, null, 1),
      kitchenOf: (id) => (people.find((person) => person.id === id)?.kitchen as Kitchen | undefined) ?? place,
    };
  });
