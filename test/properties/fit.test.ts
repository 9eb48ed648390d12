import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import {
  type Exact,
  equals,
  exact,
  fraction,
  minus,
  ONE,
  over,
  plus,
  times,
  ZERO,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { fit } from "../../src/scale/fit.ts";
import { moveLines } from "../../src/scale/move.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { arbitraryRecipe } from "../arbitraries.ts";
import { met, runs, seedFor } from "../runs.ts";
import { groupsOf } from "../scale/fit/outside.ts";
import { subjectAt, type World, worlds } from "../scale/fit/worlds.ts";

/** Laws of a fit, held literally, in fractions. */

const few = { adjustable: { min: 0, max: 4 }, demands: { min: 1, max: 4 } };
const reachable = worlds({ ...few, wild: 0 });
const any = worlds({ ...few, wild: 3 });

function check<T>(name: string, arbitrary: fc.Arbitrary<T>, law: (t: T) => void, quick = 60): void {
  fc.assert(fc.property(arbitrary, law), { seed: seedFor(name, 500), numRuns: runs(quick) });
}

/** The figure of a demand, from the public face of a sheet. */
function brought(demand: Demand, s: Sheet): Exact {
  if (demand.of !== undefined) return subjectAt(demand.of as "energy", s).value;
  return subjectAt(demand.energyShareOf === undefined ? "ratio" : (demand.energyShareOf as "fat"), s).value;
}

function faultsOfDemands(demands: readonly Demand[], s: Sheet): string[] {
  return demands.flatMap((demand) => {
    const value = brought(demand, s);
    if (demand.ratioOf && s.portion("omega3").value.n === 0n) return [];
    const { exactly, least, most } = demand;
    const wrong =
      (exactly !== undefined && !equals(value, exact(exactly))) ||
      (least !== undefined && compareRatios(value, exact(least)) < 0) ||
      (most !== undefined && compareRatios(value, exact(most)) > 0);
    return wrong ? [`${JSON.stringify(demand)}: ${exactText(value)}`] : [];
  });
}

/** What each line was multiplied by. */
function factorsOf(before: Sheet, after: Sheet): (Exact | undefined)[] {
  return before.lines.map(({ grams }, i) =>
    grams.n === 0n ? undefined : over(after.lines[i]?.grams ?? ZERO, grams),
  );
}

/** The departures of a set of line factors, summed as the design says. */
function departureOf(recipe: RecipeInput, factors: readonly (Exact | undefined)[], common: Exact): Exact {
  const groups = groupsOf(recipe.lines);
  const seen = new Map<string, Exact>();
  groups.forEach((group, i) => {
    const factor = factors[i];
    if (group !== "base" && group !== "dose" && factor) seen.set(group, factor);
  });
  return [...seen.values()].reduce((total, factor) => {
    const departure = minus(over(factor, common), ONE);
    return plus(total, departure.n < 0n ? times(departure, fraction(-2n)) : departure);
  }, ZERO);
}

describe("a fit that is met", () => {
  it("is met whenever some factors meet the demands, and departs no further than they do", () => {
    check("constructed", reachable, ({ recipe, sheet: s, demands, common, factors }: World) => {
      const fitted = fit(s, demands);
      expect(fitted.status).toBe("met");
      if (fitted.status !== "met") return;
      const theirs = departureOf(recipe, factors, common);
      expect(compareRatios(fitted.departure, theirs)).toBeLessThanOrEqual(0);
    });
  });

  it("meets every demand exactly, by the sheet's own totals", () => {
    check("exactly met", reachable, ({ sheet: s, demands }) => {
      const fitted = fit(s, demands);
      if (fitted.status === "met") expect(faultsOfDemands(demands, fitted.sheet)).toEqual([]);
    });
  });

  it("keeps ratios inside a part, doses, ranges and line bounds, and lets nothing vanish unasked", () => {
    check("kept", reachable, ({ recipe, sheet: s, demands }) => {
      const fitted = fit(s, demands);
      if (fitted.status !== "met") return;
      const common = fitted.factor;
      const factors = factorsOf(s, fitted.sheet);
      const groups = groupsOf(recipe.lines);
      const byGroup = new Map<string, Exact>([
        ["dose", ONE],
        ["base", common],
      ]);
      recipe.lines.forEach((line, i) => {
        const factor = factors[i];
        const group = groups[i] ?? "base";
        if (!factor) return;
        // Held lines move together; doses do not move.
        expect(exactText(factor)).toBe(exactText(byGroup.get(group) ?? factor));
        byGroup.set(group, factor);
        if (group === "dose") return;
        const ratio = over(factor, common);
        const grams = over(fitted.sheet.lines[i]?.grams ?? ZERO, fitted.sheet.values.portions);
        const bound = (text: unknown): Exact => exact(String(text).replace(" g", ""));
        if (line.least === undefined)
          expect(compareRatios(ratio, fraction(1n, 2n))).toBeGreaterThanOrEqual(0);
        else expect(compareRatios(grams, bound(line.least))).toBeGreaterThanOrEqual(0);
        if (line.most === undefined) expect(compareRatios(ratio, fraction(2n))).toBeLessThanOrEqual(0);
        else expect(compareRatios(grams, bound(line.most))).toBeLessThanOrEqual(0);
        if (line.least !== "0 g") expect(grams.n).toBeGreaterThan(0n);
      });
      expect(compareRatios(common, fraction(1n, 10n))).toBeGreaterThanOrEqual(0);
      expect(compareRatios(common, fraction(10n))).toBeLessThanOrEqual(0);
      // What it says of itself is what it did.
      expect(exactText(departureOf(recipe, factors, common))).toBe(exactText(fitted.departure));
      for (const { name, kind, factor: exactFactor } of fitted.factors) {
        expect(exactText(exactFactor)).toBe(exactText(byGroup.get(`${kind} ${name}`) ?? exactFactor));
      }
    });
  });

  it("departs no less when a limit is tightened", () => {
    let moved = 0;
    const tighter = fc.tuple(reachable, fc.integer({ min: 1, max: 400 }), fc.nat());
    check(
      "tightened",
      tighter,
      ([{ sheet: s, demands }, per1000, pick]) => {
        const limits = demands.filter(
          ({ exactly, ratioOf }) => exactly === undefined && ratioOf === undefined,
        );
        const chosen = limits[pick % Math.max(1, limits.length)];
        if (!chosen) return;
        const by = fraction(BigInt(per1000), 1000n);
        const ends =
          chosen.least === undefined
            ? { most: exactText(times(exact(chosen.most ?? 1), minus(ONE, by))) }
            : { least: exactText(times(exact(chosen.least), plus(ONE, by))) };
        const changed = { ...chosen, ...ends } as Demand;
        if (changed.least !== undefined && changed.most !== undefined) {
          if (compareRatios(exact(changed.least), exact(changed.most)) > 0) return;
        }
        if (changed.energyShareOf && compareRatios(exact(changed.least ?? 0), ONE) > 0) return;
        const before = fit(s, demands);
        const after = fit(
          s,
          demands.map((demand) => (demand === chosen ? changed : demand)),
        );
        if (before.status !== "met" || after.status !== "met") return;
        const change = compareRatios(after.departure, before.departure);
        if (change > 0) moved += 1;
        expect(change).toBeGreaterThanOrEqual(0);
      },
      250,
    );
    expect(moved).toBeGreaterThan(met(4));
  });

  it("does not mind the order of demands and lines", () => {
    const shuffled = fc.tuple(any, fc.infiniteStream(fc.nat()));
    check("order", shuffled, ([{ recipe, table, sheet: s, demands }, order]) => {
      const mixed = <T>(all: readonly T[]): T[] =>
        all
          .map((each) => ({ each, at: order.next().value ?? 0 }))
          .sort((a, b) => a.at - b.at)
          .map(({ each }) => each);
      const other = sheet({ ...recipe, lines: mixed(recipe.lines) }, table);
      expect(said(fit(other, mixed(demands)))).toEqual(said(fit(s, demands)));
    });
  });

  it("of a single sheet under a name is the same fit", () => {
    check("named", any, ({ sheet: s, demands }) => {
      const [alone, named] = [fit(s, demands), fit({ pot: s }, demands)];
      expect(named.status).toBe(alone.status);
      expect(named.factor).toEqual(alone.factor);
      expect(named.factors.map(({ factor }) => factor)).toEqual(alone.factors.map(({ factor }) => factor));
    });
  });
});

/** Everything a fit says, in plain data. */
function said(fitted: ReturnType<typeof fitOne>): unknown {
  const s = fitted.status === "met" ? fitted.sheet : fitted.nearest;
  const shared = {
    status: fitted.status,
    factor: fitted.factor && exactText(fitted.factor),
    factors: fitted.factors.map(({ name, factor }) => [name, exactText(factor)]),
    outcomes: fitted.outcomes.map(({ text, brings }) => [text, brings && exactText(brings)]),
    grams: s && new Map(s.lines.map(({ key, grams }) => [key, exactText(grams)])),
  };
  if (fitted.status === "met") {
    return {
      ...shared,
      binding: fitted.binding.map(({ text, price }) => [text, exactText(price)]),
    };
  }
  return {
    ...shared,
    conflict: fitted.conflict.map(({ text }) => text),
    suggestions: fitted.suggestions.map(({ text, to }) => [text, to && exactText(to)]),
  };
}

const fitOne = (s: Sheet, demands: readonly Demand[]) => fit(s, demands);

describe("a fit and one factor", () => {
  it("are the same where nothing may move alone and one figure is asked", () => {
    const plain = worlds({ adjustable: { min: 0, max: 0 }, demands: { min: 1, max: 1 }, wild: 0 });
    check("as scale", plain, ({ recipe, table, common }) => {
      const lines = recipe.lines.map(({ part: _, ...line }) => line);
      const s = sheet({ ...recipe, lines }, table);
      const goal = scale(s, { factor: exactText(common) }).sheet;
      const target = exactText(goal.portionMass);
      const fitted = fit(s, [{ of: "mass", exactly: target }]);
      const scaled = scale(s, { mass: target });
      expect(fitted.status).toBe("met");
      if (fitted.status !== "met") return;
      expect(exactText(fitted.factor)).toBe(exactText(scaled.factor));
      expect(fitted.sheet.lines.map((l) => exactText(l.grams))).toEqual(
        scaled.sheet.lines.map((l) => exactText(l.grams)),
      );
      expect(exactText(fitted.sheet.portion("water").value)).toBe(
        exactText(scaled.sheet.portion("water").value),
      );
    });
  });

  it("a target already met moves nothing, not even the common factor", () => {
    check("already met", worlds({ ...few, wild: 0, bounds: false }), ({ sheet: s }) => {
      const demands: Demand[] = [
        { of: "energy", exactly: exactText(s.portion("energy").value) },
        { of: "protein", least: exactText(s.portion("protein").value) },
        { of: "mass", most: exactText(s.portionMass) },
      ];
      const fitted = fit(s, demands);
      expect(fitted.status).toBe("met");
      if (fitted.status !== "met") return;
      expect(exactText(fitted.factor)).toBe("1");
      expect(fitted.departures).toEqual([]);
      expect(exactText(fitted.departure)).toBe("0");
    });
  });

  it("every target, bound and dose times c: the common factor times c, no departure changed", () => {
    let same = 0;
    const scaled = fc.tuple(reachable, fc.integer({ min: 1, max: 40 }));
    check("homogeneous", scaled, ([world, tenths]) => {
      const c = fraction(BigInt(tenths), 10n);
      const { recipe, table, sheet: s, demands } = world;
      const larger = sheet({ ...recipe, lines: recipe.lines.map((line) => timesBounds(line, c)) }, table);
      const asked = demands.map((demand) => timesDemand(demand, c));
      const common = {
        least: exactText(times(c, fraction(1n, 10n))),
        most: exactText(times(c, fraction(10n))),
      };
      const [a, b] = [fit(s, demands), fit(larger, asked, { common })];
      expect(b.status).toBe("met");
      if (a.status !== "met" || b.status !== "met") return;
      expect(exactText(b.departure)).toBe(exactText(a.departure));
      // With the common factor told, nothing is left to the rule that prefers one near 1.
      const at = (f: Exact) => ({ common: { least: exactText(f), most: exactText(f) } });
      const told = fit(larger, asked, at(times(c, a.factor)));
      expect(told.status).toBe("met");
      expect(told.factors.map(({ departure }) => exactText(departure))).toEqual(
        fit(s, demands, at(a.factor)).factors.map(({ departure }) => exactText(departure)),
      );
      // Otherwise the factor is c times the other, unless among equals one lies nearer 1.
      const away = (f: Exact): Exact => {
        const off = minus(over(ONE, f), ONE);
        return off.n < 0n ? minus(ZERO, off) : off;
      };
      if (equals(b.factor, times(c, a.factor))) same += 1;
      else expect(compareRatios(away(b.factor), away(times(c, a.factor)))).toBe(-1);
    });
    expect(same).toBeGreaterThan(met(18));
  });
});

type Line = RecipeInput["lines"][number];

function timesBounds(line: Line, c: Exact): Line {
  const grams = (text: unknown): string => `${exactText(times(exact(String(text).replace(" g", "")), c))} g`;
  if (line.scaling === "per-portion") return { ...line, amount: grams(line.amount) };
  return {
    ...line,
    ...(line.least !== undefined && { least: grams(line.least) }),
    ...(line.most !== undefined && { most: grams(line.most) }),
  };
}

function timesDemand(demand: Demand, c: Exact): Demand {
  if (demand.of === undefined) return demand;
  const ends = Object.entries(demand).map(([field, value]) =>
    field === "of" ? [field, value] : [field, exactText(times(exact(value as string), c))],
  );
  return Object.fromEntries(ends) as Demand;
}

describe("a fit that is out of reach", () => {
  const wild = worlds({ ...few, demands: { min: 2, max: 4 }, wild: 2, bounds: false });
  const out = wild.filter(({ sheet: s, demands }) => fit(s, demands).status === "out-of-reach");

  it("names what cannot stand together, and of which none can be spared", () => {
    let ranges = 0;
    check("irreducible", out, ({ recipe, table, sheet: s, demands }) => {
      const missed = fit(s, demands);
      if (missed.status === "met") throw new Error("met");
      const set = missed.conflict.flatMap(({ demand }) => demand ?? []);
      expect(fit(s, set).status).toBe("out-of-reach");
      for (const spared of set) {
        const without = set.filter((each) => each !== spared);
        expect(fit(s, without).status).toBe("met");
      }
      // Nor can an end of a range that is named: it opened, and all that are not named, the set can be met.
      const ends = missed.conflict.filter(({ kind }) => kind === "ratio" || kind === "common");
      const within = (named: typeof ends) => {
        const far = (kind: "ratio" | "common", name: string | undefined) =>
          (["least", "most"] as const).filter(
            (end) => !named.some((each) => each.kind === kind && each.name === name && each.end === end),
          );
        const open = (line: Line): Line =>
          line.scaling === "adjustable"
            ? { ...line, ...pick(far("ratio", line.key), { least: "0 g", most: "1000000 kg" }) }
            : line;
        const parts = recipe.lines.flatMap(({ part }) => part ?? []);
        const base = groupsOf(recipe.lines).includes("base") ? undefined : [...parts].sort()[0];
        const how = {
          common: pick(far("common", undefined), { least: "1/1000000", most: 1_000_000 }),
          parts: Object.fromEntries(
            parts
              .filter((part) => part !== base)
              .map((part) => [part, pick(far("ratio", part), { least: 0, most: 1_000_000 })]),
          ),
        };
        return fit(sheet({ ...recipe, lines: recipe.lines.map(open) }, table), set, how).status;
      };
      expect(within(ends)).toBe("out-of-reach");
      for (const spared of ends) {
        ranges += 1;
        expect(within(ends.filter((each) => each !== spared))).toBe("met");
      }
    });
    expect(ranges).toBeGreaterThan(met(30));
  });

  it("suggests only what does open it, and eases no further than it must", () => {
    let [freed, eased] = [0, 0];
    check("suggestions", out, ({ recipe, table, sheet: s, demands }) => {
      const missed = fit(s, demands);
      if (missed.status === "met") throw new Error("met");
      for (const { change, names, demand, end, to: exactTo, departure, also } of missed.suggestions) {
        if (also.length > 0) continue;
        if (change === "make-adjustable") {
          const lines = recipe.lines.map((line): Line => {
            if (!names.includes(line.key ?? "")) return line;
            const { part: _, ...rest } = line;
            const bound = end && exactTo && { [end]: `${exactText(exactTo)} g` };
            return { ...rest, scaling: "adjustable", ...bound };
          });
          const opened = fit(sheet({ ...recipe, lines }, table), demands);
          expect(opened.status).toBe("met");
          freed += 1;
          continue;
        }
        if (!demand || !exactTo) continue;
        eased += 1;
        const with_ = (to: Exact): Demand[] =>
          demands.map((each) => (each === demand ? easedTo(each, to) : each));
        const opened = fit(s, with_(exactTo));
        expect(opened.status).toBe("met");
        if (opened.status === "met") expect(opened.departure.toString()).toBe(departure.toString());
        // A thousandth less, and it would not do.
        const bound = nearestEnd(demand, exactTo);
        const short = plus(exactTo, times(minus(bound, exactTo), fraction(1n, 1000n)));
        expect(fit(s, with_(short)).status).toBe("out-of-reach");
      }
    });
    expect(freed).toBeGreaterThan(met(6));
    expect(eased).toBeGreaterThan(met(30));
  });

  it("suggests several together only where no one is enough, and they are", () => {
    let [pairs, more] = [0, 0];
    const many = worlds({ ...few, demands: { min: 3, max: 6 }, wild: 2, bounds: false });
    check(
      "together",
      many,
      ({ sheet: s, demands }) => {
        const missed = fit(s, demands);
        if (missed.status === "met") return;
        for (const suggestion of missed.suggestions) {
          const all = [suggestion, ...suggestion.also];
          if (all.length === 1) continue;
          expect(missed.suggestions.every(({ also }) => also.length > 0)).toBe(true);
          for (const { text } of all) expect(suggestion.text).toContain(text.slice(0, 20));
          if (all.some(({ demand }) => demand === undefined)) continue;
          if (all.length === 2) pairs += 1;
          else more += 1;
          const eased = (by: Exact): Demand[] =>
            demands.map((each) => {
              const to = all.find(({ demand }) => demand === each)?.to;
              if (!to) return each;
              const bound = nearestEnd(each, to);
              return easedTo(each, plus(bound, times(minus(to, bound), by)));
            });
          const opened = fit(s, eased(ONE));
          expect(opened.status).toBe("met");
          if (opened.status === "met")
            expect(opened.departure.toString()).toBe(suggestion.departure.toString());
          expect(fit(s, eased(fraction(999n, 1000n))).status).toBe("out-of-reach");
        }
      },
      200,
    );
    expect(pairs).toBeGreaterThan(met(6));
    expect(more).toBeGreaterThan(met(0));
  });

  it("keeps every firm demand in the nearest sheet, and every demand that it says it meets", () => {
    let kept = 0;
    const firm = fc.tuple(out, fc.nat());
    check("firm", firm, ([{ sheet: s, demands }, pick]) => {
      const asked = demands.map((demand, i) =>
        i === pick % demands.length ? { ...demand, firm: true } : demand,
      );
      const missed = fit(s, asked);
      if (missed.status === "met" || !missed.nearest) return;
      kept += 1;
      const held = missed.outcomes.filter(({ met }) => met).map(({ demand }) => demand);
      expect(faultsOfDemands(held, missed.nearest)).toEqual([]);
      expect(held.filter((demand) => demand.firm)).toHaveLength(1);
      expect(missed.misses.length).toBeGreaterThan(0);
      for (const { demand, brings } of missed.outcomes) {
        if (brings) expect(exactText(brings)).toBe(exactText(brought(demand, missed.nearest)));
      }
    });
    expect(kept).toBeGreaterThan(met(24));
  });
});

describe("what comes nearest", () => {
  const free = worlds({ ...few, demands: { min: 1, max: 4 }, wild: 2 });

  it("misses by as much however large the recipe was written", () => {
    let missed = 0;
    const written = fc.tuple(free, fc.constantFrom("1/7", "2/5", "3", "25"));
    check("written size", written, ([{ recipe, table, sheet: s, demands }, text]) => {
      const c = exact(text);
      // An amount of which none is asked is compared with what was written.
      if (demands.some((demand) => asked(demand).some(({ n }) => n === 0n))) return;
      const lines = recipe.lines.map((line) =>
        line.scaling === "per-portion" ? line : timesAmount(line, c),
      );
      const common = {
        least: exactText(over(fraction(1n, 10n), c)),
        most: exactText(over(fraction(10n), c)),
      };
      const [a, b] = [fit(s, demands), fit(sheet({ ...recipe, lines }, table), demands, { common })];
      expect(b.status).toBe(a.status);
      expect(missesByKind(b.outcomes)).toEqual(missesByKind(a.outcomes));
      if (a.status !== "met" && a.nearest) missed += 1;
    });
    expect(missed).toBeGreaterThan(met(12));
  });

  it("has the energy asked wherever that can be had, however far shares and ratios are", () => {
    let missed = 0;
    check("energy kept", free, ({ sheet: s, demands, recipe, table, factors }) => {
      const quotients = demands.filter(({ of }) => of === undefined);
      const goal = moveLines(sheet(recipe, table), factors, s.values.portions);
      const energy = exactText(goal.portion("energy").value);
      const fitted = fit(s, [...quotients, { of: "energy", exactly: energy }]);
      const near = fitted.status === "met" ? fitted.sheet : fitted.nearest;
      expect(near && exactText(near.portion("energy").value)).toBe(energy);
      if (fitted.status !== "met") missed += 1;
    });
    expect(missed).toBeGreaterThan(met(6));
  });
});

function timesAmount(line: Line, c: Exact): Line {
  return { ...line, amount: `${exactText(times(exact(String(line.amount).replace(" g", "")), c))} g` };
}

function asked({ exactly, least, most }: Demand): Exact[] {
  return [exactly, least, most].flatMap((end) => (end === undefined ? [] : [exact(end)]));
}

/** Misses as shares of the figures asked, totalled: amounts, shares of energy, ratios to each amount. */
function missesByKind(outcomes: ReturnType<typeof fitOne>["outcomes"]): unknown {
  const totals = new Map<string, Exact>();
  for (const { demand, miss } of outcomes) {
    const kind = demand.ratioOf?.[1] ?? (demand.energyShareOf ? "share" : "amount");
    const [first = ONE, last = first] = asked(demand);
    const share = over(miss, miss.n < 0n ? first : last);
    const size = share.n < 0n ? minus(ZERO, share) : share;
    totals.set(kind, plus(totals.get(kind) ?? ZERO, size));
  }
  return [...totals].map(([kind, total]) => [kind, exactText(total)]).sort();
}

function pick<T extends object>(fields: readonly (keyof T)[], from: T): Partial<T> {
  return Object.fromEntries(fields.map((field) => [field, from[field]])) as Partial<T>;
}

function nearestEnd({ exactly, least, most }: Demand, to: Exact): Exact {
  if (exactly !== undefined) return exact(exactly);
  if (least !== undefined && compareRatios(to, exact(least)) < 0) return exact(least);
  return exact(most ?? least ?? 0);
}

/** A demand with the end eased that stands in the way; one figure becomes a band. */
function easedTo(demand: Demand, to: Exact): Demand {
  const { exactly, least, most, ...rest } = demand;
  const text = exactText(to);
  if (exactly !== undefined) {
    const ends =
      compareRatios(to, exact(exactly)) < 0 ? { least: text, most: exactly } : { least: exactly, most: text };
    return { ...rest, ...ends } as Demand;
  }
  const isLower = least !== undefined && compareRatios(to, exact(least)) < 0;
  return { ...demand, ...(isLower ? { least: text } : { most: text }) } as Demand;
}

describe("a shadow price", () => {
  it("is what the first small step of easing buys, and never less", () => {
    let [same, all] = [0, 0];
    check("prices", reachable, ({ sheet: s, demands }) => {
      const fitted = fit(s, demands);
      if (fitted.status !== "met") return;
      for (const { demand, price: exactPrice, end } of fitted.binding) {
        if (!demand) continue;
        const bound = exact(demand.exactly ?? (end === "least" ? demand.least : demand.most) ?? 0);
        const step = times(bound.n === 0n ? ONE : bound, fraction(1n, 10n ** 9n));
        const to = end === "least" ? minus(bound, step) : plus(bound, step);
        if (to.n < 0n || (demand.energyShareOf && compareRatios(to, ONE) > 0)) continue;
        const eased = fit(
          s,
          demands.map((each) => (each === demand ? easedTo(each, to) : each)),
        );
        expect(eased.status).toBe("met");
        if (eased.status !== "met") continue;
        const bought = over(minus(fitted.departure, eased.departure), step);
        all += 1;
        const [rate, price] = [number(bought), number(exactPrice)];
        expect(rate).toBeLessThanOrEqual(price * (1 + 1e-6) + 1e-9);
        if (Math.abs(rate - price) <= 1e-6 * (1e-9 + price)) same += 1;
      }
    });
    expect(all).toBeGreaterThan(met(30));
    // Where several bounds meet in one point, the price may say more than a step buys.
    expect(same / all).toBeGreaterThan(0.8);
  });

  it("and an easing, made, buys what it says", () => {
    let all = 0;
    check("easings", reachable, ({ sheet: s, demands }) => {
      const fitted = fit(s, demands);
      if (fitted.status !== "met") return;
      for (const { demand, easing, end } of fitted.binding) {
        if (!demand || !easing) continue;
        const bound = exact(demand.exactly ?? (end === "least" ? demand.least : demand.most) ?? 0);
        const to = end === "least" ? minus(bound, easing.by) : plus(bound, easing.by);
        if (to.n < 0n || (demand.energyShareOf && compareRatios(to, ONE) > 0)) continue;
        const eased = fit(
          s,
          demands.map((each) => (each === demand ? easedTo(each, to) : each)),
        );
        all += 1;
        if (eased.status !== "met") throw new Error("not met");
        expect(exactText(eased.departure)).toBe(exactText(easing.to));
      }
    });
    expect(all).toBeGreaterThan(met(9));
  });
});

function number(f: Exact): number {
  return Number((f.n * 10n ** 24n) / f.d) / 1e24;
}

describe("what is not known", () => {
  it("keeps the common factor, with its part, unless only limited, and is listed as not proven", () => {
    let [kept, free] = [0, 0];
    check(
      "silent",
      arbitraryRecipe,
      ({ table, recipe }) => {
        const s = sheet(recipe, table);
        const demands: Demand[] = [
          { of: "protein", least: exactText(times(s.portion("protein").value, fraction(11n, 10n))) },
          { of: "sodium", most: exactText(times(s.portion("sodium").value, fraction(12n, 10n))) },
        ];
        const [protein, sodium] = [s.total("protein"), s.total("sodium")];
        // A least of 0 asks nothing.
        const silent = protein.value.n === 0n ? [] : protein.missing;
        const fitted = fit(s, demands);
        // More than a trace, or than a limit of detection, breaks a most and no least.
        const slight = [...new Set([...sodium.trace, ...sodium.below])];
        const loose = slight.filter((key) => !sodium.missing.includes(key));
        expect(fitted.notProven.map((each) => [each.demand, each.silent, each.loose])).toEqual(
          [
            [demands[0], [...silent].sort(), []] as const,
            [demands[1], [...sodium.missing].sort(), loose.sort()] as const,
          ].filter(([, silent, other]) => silent.length + other.length > 0),
        );
        for (const { name, departure, kept: isKept } of fitted.factors) {
          expect(isKept).toBe(silent.includes(name));
          if (isKept) kept += 1;
          else if (sodium.missing.includes(name)) free += 1;
          if (isKept) expect(exactText(departure)).toBe("0");
        }
      },
      300,
    );
    expect(kept).toBeGreaterThan(met(6));
    expect(free).toBeGreaterThan(met(6));
  });

  it("does not bend a fit by limits on what no line tells", () => {
    const limits: Demand[] = [
      { of: "iodine", most: 1, firm: true },
      { of: "chromium", most: 1 },
      { ratioOf: ["iodine", "chromium"], most: 1 },
    ];
    check("nothing told", any, ({ sheet: s, demands }) => {
      const [plain, limited] = [fit(s, demands), fit(s, [...demands, ...limits])];
      expect(limited.status).toBe(plain.status);
      const at = ({ factors, factor }: typeof plain) => [factor, factors];
      expect(at(limited)).toEqual(at(plain));
      expect(new Set(limited.notProven.map(({ demand }) => demand))).toEqual(new Set(limits));
      for (const { silent } of limited.notProven) expect(silent).toHaveLength(s.lines.length);
    });
  });
});
