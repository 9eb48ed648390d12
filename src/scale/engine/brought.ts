import type { ComponentId } from "../../food/components.ts";
import { type EnergyPart, type EnergySystem, termsOf } from "../../food/energy.ts";
import { fault } from "../../number/error.ts";
import { lcm } from "../../number/ratio.ts";
import type { EnergyShareOf } from "../demand.ts";
import { highEndsOf } from "./highEnds.ts";
import { energiesOf, type LinesOf, quantityOf } from "./lines.ts";
import { type Margin, withMargin } from "./margin.ts";
import { type ByLine, type Dish, type LineAt, nameIn } from "./model.ts";
import type { ReadDemand, Subject } from "./readDemand.ts";

/** A subject in figures: `value / per` is what is asked of; an amount has no `per`. */
export interface Brought {
  readonly value: ByLine;
  readonly per: ByLine | undefined;
  /** Lines that do not say what they bring. */
  readonly silent: readonly NamedLine[];
  /** Lines that may bring more of `value` than is counted: a trace, or anything under a limit. */
  readonly loose: readonly NamedLine[];
  /** The same of what it is taken of, apart from the value itself. */
  readonly looseRest: readonly NamedLine[];
  /** Lines that count with a middle figure from which the truth may lie far. */
  readonly ranged: readonly NamedLine[];
  /** Whether some line counts with its high end. */
  readonly isHigh: boolean;
  /** The side to which all lines are taken to err, where the demand has a margin. */
  readonly margin?: Margin["side"] | undefined;
  /** Lines that count as they stand there, since nobody says how far they may err. */
  readonly unsure: readonly NamedLine[];
}

type NamedLine = LineAt & { readonly name: string };

/** A demand with what the lines bring of it. */
export interface AskedDemand {
  readonly demand: ReadDemand;
  readonly brought: Brought;
  /** Dishes that it speaks of, by place; all unless told. */
  readonly within?: readonly number[];
}

export function askedOf(
  dishes: readonly Dish[],
  demands: readonly ReadDemand[],
  system: EnergySystem,
): AskedDemand[] {
  return demands.map((demand) => ({ demand, brought: broughtBy(dishes, demand.subject, system) }));
}

/** Reads off sheets what a demand is about. */
export function broughtBy(dishes: readonly Dish[], subject: Subject, system: EnergySystem): Brought {
  const quantities = (of: Parameters<typeof quantityOf>[1]): LinesOf[] =>
    dishes.map(({ sheet }) => quantityOf(sheet, of));
  if (subject.kind === "amount") {
    const { of, by, margin } = subject;
    const plain = by === "high" ? dishes.map(({ sheet }) => highEndsOf(sheet, of)) : quantities(of);
    if (!margin) return brought(dishes, plain);
    return brought(
      dishes,
      plain.map((lines, d) => withMargin((dishes[d] as Dish).sheet, of, margin, lines)),
    );
  }
  if (subject.kind === "ratio") {
    const [value, per] = subject.of;
    return brought(dishes, quantities(value), quantities(per));
  }
  const energies = dishes.map(({ sheet }) => energiesOf(sheet, system));
  const totals = energies.map(({ total }) => total);
  const place = termsOf(system).findIndex(([part]) => part === subject.of);
  if (place >= 0) {
    const parts = energies.map(({ parts }) => parts[place] as LinesOf);
    const rest = energies.map(({ parts }) => parts.filter((_, part) => part !== place));
    const looseRest = rest.map((own) => own.flatMap(({ loose }) => loose));
    return brought(dishes, parts, totals, looseRest);
  }
  const within = withinPart(subject.of, system);
  if (!within) {
    const hint = "use a factor system that counts it, or ask for an amount";
    throw fault("demand-malformed", `${system.name} tell no energy of ${subject.of}`, hint);
  }
  const held = quantities(within.component).map((own) => ({
    ...own,
    lines: own.lines.map((grams) => grams * within.factor),
  }));
  return brought(dishes, held, totals);
}

function brought(
  dishes: readonly Dish[],
  value: readonly LinesOf[],
  per?: readonly LinesOf[],
  looseRest: readonly LinesOf["loose"][] = per?.map(({ loose }) => loose) ?? [],
): Brought {
  const named = (all: readonly LinesOf["silent"][]): readonly NamedLine[] => {
    if (all.every((own) => own.length === 0)) return NONE;
    const lines = all.flatMap((own, i) =>
      own.map(({ line, key }): NamedLine => {
        const dish = i % dishes.length;
        return { dish, line, name: nameIn(dishes[dish] as Dish, key) };
      }),
    );
    return distinct(lines);
  };
  const all = [...value, ...(per ?? [])];
  return {
    value: together(dishes, value),
    per: per && together(dishes, per),
    silent: named(all.map(({ silent }) => silent)),
    ranged: named(all.map(({ ranged }) => ranged)),
    isHigh: all.some(({ isHigh }) => isHigh),
    margin: all.find(({ margin }) => margin !== undefined)?.margin,
    unsure: named(all.map(({ unsure }) => unsure ?? [])),
    loose: named(value.map(({ loose }) => loose)),
    looseRest: named(looseRest),
  };
}

const NONE: readonly NamedLine[] = [];

/** The same of some dishes alone, by place: of the others nothing counts. */
export function withinDishes(brought: Brought, dishes: readonly number[]): Brought {
  const isIn = ({ dish }: LineAt): boolean => dishes.includes(dish);
  const lines = (of: ByLine): ByLine => ({
    ...of,
    lines: of.lines.map((own, d) => (dishes.includes(d) ? own : own.map(() => 0n))),
  });
  const { value, per, silent, loose, looseRest, ranged, unsure } = brought;
  return {
    ...brought,
    value: lines(value),
    per: per && lines(per),
    silent: silent.filter(isIn),
    loose: loose.filter(isIn),
    looseRest: looseRest.filter(isIn),
    ranged: ranged.filter(isIn),
    unsure: unsure.filter(isIn),
  };
}

/** Several sheets' lines over one scale, each as it was multiplied beforehand. */
function together(dishes: readonly Dish[], given: readonly LinesOf[]): ByLine {
  const all = given.map((own, d) => multiplied(own, dishes[d]));
  let scale = 1n;
  for (const own of all) scale = lcm(scale, own.scale);
  const lines = all.map((own) =>
    own.scale === scale ? own.lines : own.lines.map((n) => n * (scale / own.scale)),
  );
  return { lines, scale };
}

function multiplied({ lines, scale }: LinesOf, dish: Dish | undefined): Pick<LinesOf, "lines" | "scale"> {
  const before = dish?.before;
  if (!before) return { lines, scale };
  const { n, d } = before;
  const isDose = (i: number): boolean => dish.sheet.plan.lines[i]?.line.scaling === "per-portion";
  return { lines: lines.map((own, i) => own * (isDose(i) ? d : n)), scale: scale * d };
}

/**
 * What is no constituent of the system counts by the one that holds it. Factors are the general
 * ones: 9 kcal/g of fat, 4 of carbohydrate, in which systems without a term for fibre count it.
 * Source: FAO Food and Nutrition Paper 77 (2003), section 3.5.
 */
function withinPart(
  of: EnergyShareOf,
  system: EnergySystem,
): { readonly component: ComponentId; readonly factor: bigint } | undefined {
  const holders: { readonly [S in EnergyShareOf]?: readonly [EnergyPart, ComponentId, bigint] } = {
    saturatedFat: ["fat", "saturatedFat", 9n],
    addedSugars: ["carbohydrate", "addedSugars", 4n],
    fibre: ["carbohydrate", "fibre", 4n],
  };
  const [holder, component, factor] = holders[of] ?? [];
  if (!holder || !component || factor === undefined || !system.parts[holder]) return undefined;
  return { component, factor };
}

function distinct<T extends { readonly name: string }>(all: readonly T[]): T[] {
  return [...new Map(all.map((each) => [each.name, each])).values()];
}
