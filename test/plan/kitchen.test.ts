import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, gramsOf } from "../../src/measure/amount.ts";
import type { Kitchen } from "../../src/measure/kitchen.ts";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import {
  absolute,
  type Exact,
  exact,
  fraction,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { type PartServing, type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { Portion } from "../../src/plan/portion.ts";
import type { Demand } from "../../src/scale/demand.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { met, runs } from "../runs.ts";
import { faultIn } from "../scale/round/checker.ts";
import { figureOf, type PlanWorld, planWorlds } from "./kitchenWorlds.ts";

const text = (f: Exact | undefined | null): string => (f ? exactText(f) : "none");

/** Plans that are refused (a target that no factor reaches, say) have nothing to be measured. */
function planned({ input }: PlanWorld): { readonly plan: Plan; readonly before: Plan } | undefined {
  const { kitchen: _, tolerance: __, ...rest } = input;
  try {
    const bare = { ...rest, people: input.people.map(({ kitchen: ___, ...person }) => person) };
    return { before: portionPlan(bare), plan: portionPlan(input) };
  } catch (error) {
    if (error instanceof SteelyardError && /^(target|fit)-/.test(error.code)) return undefined;
    throw error;
  }
}

let seen = 0;
function always(law: (world: PlanWorld, plan: Plan, before: Plan) => void, quick = 40): void {
  const numRuns = runs(quick);
  seen = 0;
  fc.assert(
    fc.property(planWorlds, (world) => {
      const made = planned(world);
      if (!made) return;
      seen += 1;
      law(world, made.plan, made.before);
    }),
    { numRuns },
  );
  // Most plans are to be had; else nothing was tried.
  expect(seen).toBeGreaterThan(numRuns / 2);
}

const quantities: readonly (readonly [string, (s: Sheet) => Exact])[] = [
  ["raw", (s) => s.masses.raw],
  ["cooked", (s) => s.masses.cooked],
  ...(["energy", "protein", "fat", "sodium", "water"] as const).map(
    (id) => [id, (s: Sheet) => s.total(id).value] as const,
  ),
];

function made({ pot, share: exactShare, added }: PartServing, of: (s: Sheet) => Exact): Exact {
  const share = pot ? times(of(pot.sheet), exactShare) : ZERO;
  return added ? plus(share, of(added)) : share;
}

/** Lines of a sheet that were to be rounded and are not in the kitchen's set. */
function faultsOf(s: Sheet, place: Kitchen, reported: ReadonlySet<string>): string[] {
  return s.lines.flatMap((line) => {
    if (line.scaling === "per-portion" || reported.has(line.key)) return [];
    const wrong = faultIn(line.amount, place);
    return wrong === undefined ? [] : [`${line.key}: ${wrong}`];
  });
}

describe("a plan for a kitchen", () => {
  it("measures everything in a pot by the cook's kitchen, and what is added by the person's", () => {
    always(({ place, kitchenOf }, plan) => {
      for (const dish of plan.meals.flatMap(({ dishes }) => [...dishes.values()])) {
        for (const { sheet, notes } of dish.pots) {
          if (notes.some(({ code }) => code === "not-rounded")) continue;
          const reported = new Set(
            notes.flatMap(({ code, line }) => (code === "not-measurable" ? (line ?? []) : [])),
          );
          expect(faultsOf(sheet, place, reported)).toEqual([]);
        }
        for (const { person, added } of dish.servings) {
          const { drift, kitchenNotes } = plan.portion(person, "meal");
          if (!added || drift?.status === "unrounded") continue;
          const reported = new Set(
            kitchenNotes.flatMap(({ code, line }) => (code === "not-measurable" ? (line ?? []) : [])),
          );
          expect(faultsOf(added, kitchenOf(person), reported)).toEqual([]);
        }
      }
    });
  });

  it("reports nothing as not measurable that is", () => {
    always(({ place }, plan) => {
      for (const dish of plan.meals.flatMap(({ dishes }) => [...dishes.values()])) {
        for (const { sheet, notes } of dish.pots) {
          for (const { line } of notes.filter(({ code }) => code === "not-measurable")) {
            const own = sheet.lines.find(({ key }) => key === line);
            // A food's own cup may be another than the kitchen's, of which the checker knows nothing.
            if (own?.amount.unit.startsWith("cup") && own.amount.kind === "own") continue;
            expect(own && faultIn(own.amount, place)).not.toBe(undefined);
          }
        }
      }
    }, 120);
  });

  it("is still pot + additions = portions = batch, in mass and every component, literally", () => {
    always((_, plan) => {
      for (const [name, dish] of plan.meals.flatMap(({ dishes }) => [...dishes])) {
        for (const [, of] of quantities) {
          for (const serving of dish.servings) {
            const portion = plan.portion(serving.person, "meal").dishes.get(name);
            expect(text(made(serving, of))).toBe(text(portion && of(portion)));
          }
          const all = sum(dish.servings.map((serving) => made(serving, of)));
          expect(text(all)).toBe(text(of(dish.batch)));
        }
        for (const pot of dish.pots) {
          const eating = dish.servings.filter((serving) => serving.pot === pot);
          expect(text(sum(eating.map(({ share }) => share)))).toBe("1");
        }
      }
    });
  });

  it("writes amounts that weigh what the sheets say, in portions, pots, additions and batch", () => {
    always((_, plan) => {
      const sheets = [
        ...plan.portions.flatMap(({ dishes }) => [...dishes.values()]),
        ...plan.meals.flatMap(({ dishes }) =>
          [...dishes.values()].flatMap(({ batch, pots, servings }) => [
            batch,
            ...pots.map(({ sheet }) => sheet),
            ...servings.flatMap(({ added }) => added ?? []),
          ]),
        ),
      ];
      for (const s of sheets) {
        for (const [i, { reader }] of s.plan.lines.entries()) {
          const own = s.values.amounts[i];
          expect(text(own && reader.toGrams(own).grams)).toBe(text(s.values.grams[i]));
        }
      }
    }, 60);
  });

  it("weighs shares in whole steps of the scale, all but the largest, each within a step where nothing is firm", () => {
    let weighed = 0;
    always(({ place, input }, plan, before) => {
      const step = place.scale === undefined ? undefined : gramsOf(amount(place.scale));
      for (const [name, dish] of plan.meals.flatMap(({ dishes }) => [...dishes])) {
        for (const { people, sheet, notes } of dish.pots) {
          const eating = dish.servings.filter(({ person }) => people.includes(person));
          if (
            people.length < 2 ||
            notes.some(({ code }) => code === "shares-exact" || code === "not-rounded")
          ) {
            continue;
          }
          if (!step) throw new Error("shares without a scale are not weighed, and that is told");
          weighed += 1;
          const largest = eating
            .map(({ share }) => share)
            .reduce((a, b) => (compareRatios(a, b) >= 0 ? a : b));
          const parts = eating.filter(({ grams }) => over(grams, step).d !== 1n);
          expect(parts.map(({ isRest }) => isRest)).toEqual(parts.length === 0 ? [] : [true]);
          const firm = input.people.some(({ demands }) => Array.isArray(demands));
          for (const { person, share, grams, isRest, weighed: read } of eating) {
            expect(grams.n > 0n).toBe(true);
            if (!isRest) expect(text(read && gramsOf(read))).toBe(text(grams));
            if (firm) continue;
            const asked = before.dish("meal", name).serving(person).share;
            const off = times(absolute(minus(share, asked)), sheet.masses.cooked);
            expect(compareRatios(off, times(step, fraction(isRest ? 2n : 1n)))).toBeLessThanOrEqual(0);
            if (isRest) expect(text(share)).toBe(text(largest));
          }
        }
      }
    });
    expect(weighed).toBeGreaterThan(met(2));
  });

  it("leaves what is the same for everyone as it is", () => {
    always((_, plan, before) => {
      for (const { person, dishes } of plan.portions) {
        for (const [name, s] of dishes) {
          const exactly = before.portion(person, "meal").dishes.get(name);
          for (const [i, { key, scaling, grams }] of s.lines.entries()) {
            if (scaling !== "per-portion") continue;
            expect([key, text(grams)]).toEqual([key, text(exactly?.lines[i]?.grams)]);
          }
        }
      }
    });
  });

  it("keeps every firm demand, and every target within the tolerance or says that it does not", () => {
    let firm = 0;
    always(({ input }, plan) => {
      const slack = exact(input.tolerance === "2 %" ? "0.02" : (input.tolerance ?? "0.02"));
      for (const person of input.people) {
        const portion = plan.portion(person.id, "meal");
        if (portion.status === "not-served") continue;
        const sheets = [...portion.dishes.values()];
        const told = new Set(portion.kitchenNotes.map(({ code }) => code));
        for (const demand of asked(person.demands)) {
          const brings = figureOf(sheets, demand);
          const held = holds(demand, brings, demand.firm === true ? ZERO : slack);
          if (demand.firm) firm += 1;
          if (demand.firm) expect([person.id, demand, held]).toEqual([person.id, demand, true]);
          else if (!held) expect(told.has("off-target") || told.has("not-rounded")).toBe(true);
        }
        if (told.has("not-rounded")) expect(portion.drift?.status).toBe("unrounded");
      }
    }, 120);
    expect(firm).toBeGreaterThan(met(12));
  });

  it("tells its drift as the sheets have it", () => {
    always(({ input }, plan, before) => {
      for (const { person, dishes, drift, status } of plan.portions) {
        const demands = asked(input.people.find(({ id }) => id === person)?.demands);
        if (status === "not-served") {
          expect(drift).toBe(undefined);
          continue;
        }
        const exactly = [...before.portion(person, "meal").dishes.values()];
        const sheets = [...dishes.values()];
        expect(drift?.demands.length).toBe(demands.length);
        for (const own of drift?.demands ?? []) {
          expect(text(own.brings)).toBe(text(figureOf(sheets, own.demand)));
          expect(text(own.before)).toBe(text(figureOf(exactly, own.demand)));
          const [low, high] = endsOf(own.demand);
          const end = low && own.brings && compareRatios(own.brings, low) < 0 ? low : high;
          const isOff = own.off !== null && own.off.n !== 0n;
          if (isOff && end && own.brings) {
            expect(text(own.off)).toBe(text(minus(over(own.brings, end), ONE)));
          } else if (own.brings)
            expect(holds(own.demand, own.brings, ZERO) || !end || end.n === 0n).toBe(true);
        }
        expect(text(drift?.ratio?.drift)).toBe(text(worst(exactly, sheets)));
      }
    });
  });

  it("keeps what was told of a portion before it was measured", () => {
    always((_, plan, before) => {
      for (const portion of plan.portions) {
        const was = before.portion(portion.person, "meal");
        expect(portion.status).toBe(was.status);
        expect(portion.shared === undefined).toBe(was.shared === undefined);
        expect([portion.why, portion.misses.length]).toEqual([was.why, was.misses.length]);
      }
    }, 60);
  });

  it("does not depend on the order of people", () => {
    always(({ input }, plan) => {
      const turned = portionPlan({ ...input, people: [...input.people].reverse() });
      for (const { person, dishes } of plan.portions) {
        const other = turned.portion(person, "meal").dishes;
        const grams = (of: Portion["dishes"]): string[] =>
          [...of].flatMap(([name, s]) => [name, ...s.values.grams.map(text)]);
        expect(grams(other)).toEqual(grams(dishes));
      }
    }, 60);
  });

  it("shows itself whatever was measured", () => {
    always((_, plan) => {
      const shown = toText(plan, { parts: "all" });
      expect(shown.includes("Effect of rounding")).toBe(plan.portions.some(({ drift }) => drift));
    }, 60);
  });
});

type Asked = NonNullable<PlanWorld["input"]["people"][0]["demands"]>;

/** What someone wants as demands: a target is one exact figure, a factor none. */
function asked(demands: Asked | undefined): readonly Demand[] {
  if (demands === undefined) return [];
  if (Array.isArray(demands)) return demands;
  const { energy, mass } = demands as { readonly energy?: string; readonly mass?: string };
  if (energy !== undefined) return [{ of: "energy", exactly: energy }];
  return mass === undefined ? [] : [{ of: "mass", exactly: mass }];
}

function endsOf({ exactly, least, most }: Demand): readonly [Exact | undefined, Exact | undefined] {
  const read = (value: Demand["exactly"]): Exact | undefined =>
    value === undefined ? undefined : exact(value);
  return [read(exactly ?? least), read(exactly ?? most)];
}

function holds(demand: Demand, brings: Exact | null, slack: Exact): boolean {
  const [low, high] = endsOf(demand);
  if (!brings) return false;
  if (low && compareRatios(brings, times(low, minus(ONE, slack))) < 0) return false;
  return !(high && compareRatios(brings, times(high, plus(ONE, slack))) > 0);
}

/** The line whose share of the mass, doses left out, moved most. */
function worst(before: readonly Sheet[], after: readonly Sheet[]): Exact | undefined {
  const lines = (of: readonly Sheet[]) =>
    of.flatMap((s) => s.lines.filter(({ scaling }) => scaling !== "per-portion").map(({ grams }) => grams));
  const [was, is] = [lines(before), lines(after)];
  const shares = (all: readonly Exact[]) =>
    all.map((grams) => (sum(all).n === 0n ? ZERO : over(grams, sum(all))));
  const [old, now] = [shares(was), shares(is)];
  const moved = old.flatMap((share, i) => (share.n === 0n ? [] : [minus(over(now[i] ?? ZERO, share), ONE)]));
  return moved.reduce<Exact | undefined>(
    (far, each) => (far && compareRatios(absolute(far), absolute(each)) >= 0 ? far : each),
    undefined,
  );
}
