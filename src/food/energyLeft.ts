import { type Exact, greatest, isZero, least, minus, ONE, plus, sum, times, ZERO } from "../number/exact.ts";
import { type ComponentId, components } from "./components.ts";
import { likelySystem, systemFor, weightsOf } from "./energy.ts";
import { type FigureKind, figureMarks, type ReadFigure } from "./figure.ts";
import type { FoodInput } from "./food.ts";

/** One cooking as it bears on a food's figures. */
export interface OneCooking {
  before(id: ComponentId): ReadFigure;
  after(id: ComponentId): ReadFigure;
  /** The share that the cooking names for a component, 0 to 1. */
  left(id: ComponentId): Exact | undefined;
  /** Whether the cooking changes a component: by a share of its own, or through what it is computed from. */
  changes(id: ComponentId): boolean;
}

/** What the cooking takes of one constituent, kcal. */
interface Loss {
  readonly id: ComponentId;
  readonly value: Exact;
  readonly least: Exact;
  readonly most: Exact;
}

/**
 * Energy as a food gives it, less what a cooking takes of its constituents, by the factors that the
 * figure was most likely computed by: wine that has lost alcohol has lost 7 kcal with each gram.
 *
 * Of a constituent that is silent or a trace, all may have gone that the others do not account for; of
 * one below a limit, the limit. What then stays is a lower bound.
 */
export function energyLeft(food: FoodInput, energy: ReadFigure, cooking: OneCooking): ReadFigure {
  if (isZero(energy.value)) return energy;
  const { system } = likelySystem(food);
  const weights = weightsOf(systemFor(system, food) ?? system);
  const changed = [...weights].filter(([id]) => cooking.changes(id));
  if (changed.length === 0) return energy;
  const isOpen = (id: ComponentId): boolean => cooking.before(id).high === undefined;
  const losses = changed.filter(([id]) => !isOpen(id)).map(([id, weight]) => lossOf(id, weight, cooking));
  const unseen = times(
    changed.filter(([id]) => isOpen(id)).reduce((all, [id]) => greatest(all, goneOf(id, cooking)), ZERO),
    restOf(energy, weights, cooking),
  );
  const value = minus(energy.value, plus(sum(losses.map((loss) => loss.value)), unseen));
  const isBound = !isZero(unseen) || value.n < 0n || losses.some(({ id }) => isLimit(cooking.before(id)));
  const low = minus(energy.low ?? ZERO, plus(sum(losses.map((loss) => loss.most)), unseen));
  const high = energy.high && minus(energy.high, sum(losses.map((loss) => loss.least)));
  const of = changed.map(([id]) => components[id].name).join(", ");
  return {
    kind: "derived",
    value: greatest(ZERO, value),
    low: greatest(ZERO, low),
    ...(high && { high: greatest(ZERO, high) }),
    note: `as given, less what cooking takes of ${of}, by ${system.name}`,
    inputs: saidOf(
      energy,
      changed.map(([id]) => cooking.before(id)),
      isBound,
    ),
  };
}

function lossOf(id: ComponentId, weight: Exact, { before, after }: OneCooking): Loss {
  const [was, is] = [before(id), after(id)];
  const of = (end: "low" | "high"): Exact => times(weight, minus(was[end] ?? was.value, is[end] ?? is.value));
  const [a, b] = [of("low"), of("high")];
  const most = greatest(a, b);
  const value = isLimit(was) ? most : times(weight, minus(was.value, is.value));
  return { id, value, least: least(a, b), most };
}

/** The share that may have gone of a constituent that nobody has measured. */
function goneOf(id: ComponentId, { left }: OneCooking): Exact {
  return minus(ONE, left(id) ?? ZERO);
}

/** The energy that the constituents that are known of do not account for. */
function restOf(energy: ReadFigure, weights: ReadonlyMap<ComponentId, Exact>, { before }: OneCooking): Exact {
  const known = [...weights].map(([id, weight]) => times(weight, before(id).value));
  return greatest(ZERO, minus(energy.value, sum(known)));
}

function isLimit({ kind, inputs = [] }: ReadFigure): boolean {
  return kind === "below" || inputs.includes("below");
}

const HOW_KNOWN: readonly FigureKind[] = ["borrowed", "calculated", "presumed"];

type Said = NonNullable<ReadFigure["inputs"]>[number];

/** What energy and what was lost of it say of themselves, where that is not plainly known. */
function saidOf(energy: ReadFigure, lost: readonly ReadFigure[], isBound: boolean): readonly Said[] {
  const kinds = [energy, ...lost].flatMap(figureMarks);
  const said = kinds.filter((kind): kind is Said => HOW_KNOWN.includes(kind));
  return [...new Set<Said>(isBound ? [...said, "below"] : said)];
}
