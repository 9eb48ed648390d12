import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import {
  absolute,
  type Exact,
  exact,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { PersonInput, PlanInput } from "../../src/plan/input.ts";
import { type Plan, type Portion, portionPlan } from "../../src/plan/plan.ts";
import type { Demand, Quantity } from "../../src/scale/demand.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { met, runs } from "../runs.ts";
import { partitions } from "./partitions.ts";
import { canShare } from "./potsOutside.ts";
import { type PotsShape, type PotsWorld, potsWorlds } from "./potsWorlds.ts";

const text = (f: Exact | undefined): string => exactText(f ?? exact(-1));

function planned({ meal }: PotsWorld, people: readonly PersonInput[], pots: PlanInput["pots"]): Plan {
  return portionPlan({ meals: [meal], people, ...(pots !== undefined && { pots }) });
}

/** The dish with parts, whose pots are counted. */
function dishOf(plan: Plan) {
  const [meal] = plan.meals;
  const dishes = [...(meal?.dishes.values() ?? [])];
  return dishes.find(({ name }) => name === "pot") ?? (dishes[0] as (typeof dishes)[number]);
}

const potsOf = (plan: Plan): number => dishOf(plan).pots.length;

/** Those whose demands can be met at all. */
function reached(world: PotsWorld): readonly PersonInput[] {
  const plan = planned(world, world.people, "exact");
  return world.people.filter(({ id }) => plan.portion(id, "meal").status === "met");
}

function brings({ dishes }: Portion, of: Quantity): Exact {
  const all = [...dishes.values()];
  return sum(all.map((s) => (of === "mass" ? s.masses.cooked : s.total(of).value)));
}

/** By what share of its figure a demand is missed, read off the sheets that are served. */
function missed(portion: Portion, demand: Demand): Exact {
  const value =
    demand.ratioOf !== undefined
      ? over(brings(portion, demand.ratioOf[0]), brings(portion, demand.ratioOf[1]))
      : brings(portion, demand.of as Quantity);
  const read = (end: unknown): Exact | undefined => (end === undefined ? undefined : exact(String(end)));
  const [least, most] = [read(demand.exactly ?? demand.least), read(demand.exactly ?? demand.most)];
  if (least && compareRatios(value, least) < 0) return over(minus(least, value), least);
  return most && compareRatios(value, most) > 0 ? over(minus(value, most), most) : ZERO;
}

const tolerances = fc.integer({ min: 0, max: 15 }).map((n) => `${n}/100`);
const shape: PotsShape = { people: 5, parts: 2, aside: true };
const shuffled = <T>(all: readonly T[]): fc.Arbitrary<readonly T[]> =>
  fc.shuffledSubarray([...all], { minLength: all.length, maxLength: all.length });

describe("the fewest pots within a tolerance", () => {
  it("leave every demand within it, firm ones untouched, read off what is served", () => {
    let moved = 0;
    fc.assert(
      fc.property(potsWorlds(shape), tolerances, (world, tolerance) => {
        const plan = planned(world, world.people, { tolerance });
        for (const { id, demands } of world.people) {
          const portion = plan.portion(id, "meal");
          if (portion.status === "out-of-reach" || portion.status === "not-served") continue;
          const asked = Array.isArray(demands) ? (demands as readonly Demand[]) : [];
          const off = asked.map((demand) => missed(portion, demand));
          asked.forEach((demand, i) => {
            expect(compareRatios(off[i] ?? ZERO, demand.firm ? ZERO : exact(tolerance))).toBeLessThanOrEqual(
              0,
            );
          });
          if (!portion.shared) continue;
          moved += 1;
          if (Array.isArray(demands)) {
            const worst = off.reduce((a, b) => (compareRatios(a, b) > 0 ? a : b), ZERO);
            expect(text(portion.shared.worst)).toBe(text(worst));
            expect(portion.misses.length).toBe(off.filter((each) => each.n > 0n).length);
          } else if ("energy" in (demands ?? {})) {
            expect(text(brings(portion, "energy"))).toBe(String((demands as { energy: number }).energy));
          } else {
            const factor = exact((demands as { factor: string }).factor);
            const offBy = [...portion.dishes].flatMap(([name, s]) =>
              s.lines.flatMap((line, i) => {
                const base = name === "pot" || !world.aside ? world.sheet : world.aside.sheet;
                if (line.scaling === "per-portion") return [];
                const own = over(line.grams, base.lines[i]?.grams ?? ONE);
                return [absolute(minus(over(own, factor), ONE))];
              }),
            );
            const worst = offBy.reduce((a, b) => (compareRatios(a, b) > 0 ? a : b), ZERO);
            expect(text(portion.shared.worst)).toBe(text(worst));
            expect(compareRatios(worst, exact(tolerance))).toBeLessThanOrEqual(0);
          }
          expect(portion.status).toBe(portion.shared.worst.n === 0n ? "met" : "within-tolerance");
        }
      }),
      { numRuns: runs(120) },
    );
    expect(moved).toBeGreaterThan(met(100));
  });

  it("are as few as trying every way to share finds, by a solver of its own", () => {
    let [alike, saved] = [0, 0];
    fc.assert(
      fc.property(potsWorlds({ people: 5, parts: 2, aside: true }), tolerances, (world, tolerance) => {
        const people = reached(world);
        if (people.length < 2) return;
        const plan = planned(world, people, { tolerance });
        const few = (by: number): number => {
          const known = new Map<string, boolean>();
          const can = (group: readonly PersonInput[]): boolean => {
            const key = group.map(({ id }) => id).join();
            const found = known.get(key) ?? (group.length < 2 || canShare(world, group, by));
            known.set(key, found);
            return found;
          };
          return Math.min(
            ...partitions(people)
              .filter((p) => p.every(can))
              .map((p) => p.length),
          );
        };
        const [n = "", d = "1"] = tolerance.split("/");
        const by = Number(n) / Number(d);
        // A hair more and a hair less: floats cannot tell who can only just share.
        const [least, most] = [
          few(by + 1e-6),
          by === 0 ? potsOf(planned(world, people, "exact")) : few(by - 1e-6),
        ];
        expect(dishOf(plan).sharing?.proven).toBe(true);
        expect(potsOf(plan)).toBeGreaterThanOrEqual(least);
        expect(potsOf(plan)).toBeLessThanOrEqual(most);
        if (least === most) alike += 1;
        if (potsOf(plan) < potsOf(planned(world, people, "exact"))) saved += 1;
      }),
      { numRuns: runs(100) },
    );
    expect(alike).toBeGreaterThan(met(75));
    expect(saved).toBeGreaterThan(met(30));
  });

  it("are never more as the tolerance grows, nor more than without one", () => {
    fc.assert(
      fc.property(potsWorlds(shape), tolerances, tolerances, (world, one, other) => {
        const [small, large] = [one, other].sort((a, b) => compareRatios(exact(a), exact(b)));
        const counts = ["exact" as const, { tolerance: 0 }, { tolerance: small }, { tolerance: large }].map(
          (pots) => potsOf(planned(world, world.people, pots as PlanInput["pots"])),
        );
        for (const [i, count] of counts.entries()) {
          if (i > 0) expect(count).toBeLessThanOrEqual(counts[i - 1] as number);
        }
      }),
      { numRuns: runs(100) },
    );
  });

  it("do not depend on the order of people", () => {
    const drawn = potsWorlds(shape).chain((world) =>
      fc.record({ world: fc.constant(world), other: shuffled(world.people), tolerance: tolerances }),
    );
    fc.assert(
      fc.property(drawn, ({ world, other, tolerance }) => {
        const [one, two] = [world.people, other].map((people) => planned(world, people, { tolerance }));
        if (!one || !two) return;
        const groups = (plan: Plan): string[] =>
          dishOf(plan)
            .pots.map(({ people }) => [...people].sort().join())
            .sort();
        expect(groups(two)).toEqual(groups(one));
        for (const { id } of world.people) {
          const served = (plan: Plan): string[] =>
            [...plan.portion(id, "meal").dishes.values()].flatMap(({ lines }) =>
              lines.map(({ grams }) => text(grams)),
            );
          expect(served(two)).toEqual(served(one));
        }
      }),
      { numRuns: runs(100) },
    );
  });

  it("and what is added are the portions, literally, and everyone's share is in the pot's ratios", () => {
    const quantities: readonly ((s: Sheet) => Exact)[] = [
      (s) => s.masses.raw,
      (s) => s.masses.cooked,
      (s) => s.total("energy").value,
      (s) => s.total("protein").value,
    ];
    fc.assert(
      fc.property(potsWorlds(shape), tolerances, (world, tolerance) => {
        const plan = planned(world, world.people, { tolerance });
        for (const [name, dish] of plan.meals[0]?.dishes ?? []) {
          for (const of of quantities) {
            for (const { person, pot, share, added } of dish.servings) {
              const portion = plan.portion(person, "meal").dishes.get(name);
              const made = plus(pot ? times(of(pot.sheet), share) : ZERO, added ? of(added) : ZERO);
              expect(text(made)).toBe(text(portion && of(portion)));
            }
            const all = [
              ...dish.pots.map(({ sheet }) => of(sheet)),
              ...dish.servings.map(({ added }) => (added ? of(added) : ZERO)),
            ];
            expect(text(sum(all))).toBe(text(of(dish.batch)));
          }
        }
      }),
      { numRuns: runs(100) },
    );
  });

  it("can be measured out by a kitchen: still as many pots, still adding up, firm demands still held", () => {
    fc.assert(
      fc.property(potsWorlds({ ...shape, people: 4 }), tolerances, (world, tolerance) => {
        const how = { meals: [world.meal], people: world.people, pots: { tolerance } };
        const [plain, measured] = [portionPlan(how), portionPlan({ ...how, kitchen: "metric" })];
        const groups = (plan: Plan): string[] => dishOf(plan).pots.map(({ people }) => people.join());
        expect(groups(measured)).toEqual(groups(plain));
        for (const { id, demands } of world.people) {
          const portion = measured.portion(id, "meal");
          expect(portion.status).toBe(plain.portion(id, "meal").status);
          if (portion.status === "not-served" || !Array.isArray(demands)) continue;
          for (const demand of (demands as readonly Demand[]).filter(({ firm }) => firm)) {
            expect(text(missed(portion, demand))).toBe("0");
          }
        }
        for (const dish of measured.meals[0]?.dishes.values() ?? []) {
          const all = [
            ...dish.pots.map(({ sheet }) => sheet.masses.raw),
            ...dish.servings.map(({ added }) => (added ? added.masses.raw : ZERO)),
          ];
          expect(text(sum(all))).toBe(text(dish.batch.masses.raw));
        }
      }),
      { numRuns: runs(30) },
    );
  });

  it("leave alone whoever keeps their ratios, and those who cannot be served as they asked", () => {
    fc.assert(
      fc.property(potsWorlds(shape), tolerances, (world, tolerance) => {
        const [before, after] = ["exact" as const, { tolerance }].map((pots) =>
          planned(world, world.people, pots),
        );
        const isFewer = before && after && potsOf(after) < potsOf(before);
        for (const { id } of world.people) {
          const [was, is] = [before, after].map((plan) => plan?.portion(id, "meal"));
          if (!was || !is) continue;
          const isKept = !isFewer || was.status === "out-of-reach" || was.status === "not-served";
          if (isKept) expect(is.shared).toBeUndefined();
          if (is.shared) continue;
          expect(is.status).toBe(was.status);
          expect(text(is.factor)).toBe(text(was.factor));
        }
      }),
      { numRuns: runs(100) },
    );
  });
});
