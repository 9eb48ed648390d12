import { CookingSchedule } from "../cook/schedule.ts";
import { refuseHole } from "../document/safe.ts";
import { type Fault, fault, type Path, throwIfAny } from "../number/error.ts";
import { ONE, plus } from "../number/exact.ts";
import { Plan } from "../plan/planned.ts";
import { Sheet } from "../sheet/sheet.ts";
import type { ShopEater } from "./portions.ts";

/** What people and meals are called, by id, in the plan's order. */
export interface ShopNames {
  readonly people: ReadonlyMap<string, string>;
  readonly meals: ReadonlyMap<string, string>;
}

/** What is cooked, who eats of it, and what they are called. */
export interface ReadShopped {
  readonly sheets: readonly Sheet[];
  readonly eaters: () => readonly ShopEater[];
  readonly names: ShopNames;
}

const HINT = "give a plan, a schedule, a sheet, or a list of them";

/** Throws `shopping-malformed` for anything that nobody can shop for. */
export function readShopped(x: unknown): ReadShopped {
  const faults: Fault[] = [];
  if (Array.isArray(x)) refuseHole(x, "shopping-malformed");
  const all = Array.isArray(x)
    ? x.flatMap((each: unknown, i) => readOne(each) ?? refuse(faults, [i]))
    : [readOne(x) ?? nothing()];
  throwIfAny(faults);
  const [only, ...others] = all;
  return only && others.length === 0 ? only : together(all);
}

function readOne(x: unknown): ReadShopped | undefined {
  if (x instanceof Plan) return planned(x);
  if (x instanceof CookingSchedule) return scheduled(x);
  return x instanceof Sheet ? ofSheet(x) : undefined;
}

function nothing(): never {
  throw fault("shopping-malformed", "there is nothing to shop for", HINT);
}

function refuse(faults: Fault[], path: Path): [] {
  faults.push({ code: "shopping-malformed", path, message: "nobody can shop for this", hint: HINT });
  return [];
}

/** Of what several name alike, the first says what it is called. */
function together(all: readonly ReadShopped[]): ReadShopped {
  const named = (of: keyof ShopNames): ReadonlyMap<string, string> =>
    new Map([...all].reverse().flatMap(({ names }) => [...names[of]]));
  const inOrder = (of: keyof ShopNames): ReadonlyMap<string, string> => {
    const names = named(of);
    const ids = new Set(all.flatMap((each) => [...each.names[of].keys()]));
    return new Map([...ids].map((id) => [id, names.get(id) ?? id]));
  };
  return {
    sheets: all.flatMap(({ sheets }) => sheets),
    eaters: () => merged(all.flatMap(({ eaters }) => eaters())),
    names: { people: inOrder("people"), meals: inOrder("meals") },
  };
}

/** Whoever eats of a meal in several plans is one eater of it. */
function merged(eaters: readonly ShopEater[]): readonly ShopEater[] {
  const found = new Map<string, ShopEater>();
  eaters.forEach((eater, i) => {
    const { person, meal, portions, sheets } = eater;
    const key = person === undefined ? String(i) : JSON.stringify([person, meal]);
    const before = found.get(key);
    found.set(
      key,
      before
        ? { ...before, portions: plus(before.portions, portions), sheets: [...before.sheets, ...sheets] }
        : eater,
    );
  });
  return [...found.values()];
}

function planned(plan: Plan): ReadShopped {
  return {
    sheets: plan.meals.flatMap(({ batch }) => [...batch.values()]),
    eaters: () =>
      plan.portions
        .filter(({ status }) => status !== "away")
        .map(({ person, meal, dishes }) => ({
          person,
          meal,
          dish: undefined,
          portions: ONE,
          sheets: [...dishes.values()],
        })),
    names: namesIn(plan),
  };
}

function scheduled(schedule: CookingSchedule): ReadShopped {
  return {
    sheets: schedule.cooked(),
    eaters: () => schedule.eaten().map((each) => ({ ...each, dish: undefined })),
    names: namesIn(schedule.plan),
  };
}

/** What people and meals of a plan are called. */
export function namesIn({ people, meals }: Plan): ShopNames {
  return {
    people: new Map(people.map(({ id, name }) => [id, name])),
    meals: new Map(meals.map(({ id, name }) => [id, name])),
  };
}

function ofSheet(s: Sheet): ReadShopped {
  const { portions } = s.values;
  return {
    sheets: [s],
    eaters: () => [{ person: undefined, meal: undefined, dish: s.name, portions, sheets: [s] }],
    names: { people: new Map(), meals: new Map() },
  };
}
