import { type Fault, fault, throwIfAny } from "../../number/error.ts";
import { ONE } from "../../number/fraction.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { Plan } from "../planned.ts";
import type { Names } from "./costTables.ts";
import type { Eater } from "./portions.ts";

/** What is cooked, who eats of it, and what they are called. */
export interface ReadShopped {
  readonly sheets: readonly Sheet[];
  readonly eaters: () => readonly Eater[];
  readonly names: Names;
}

/** Throws `shopping-malformed` for anything that nobody can shop for. */
export function readShopped(x: unknown): ReadShopped {
  if (x instanceof Plan) return planned(x);
  if (x instanceof Sheet) return ofSheets([x]);
  const hint = "give a plan, a sheet or a list of sheets";
  if (!Array.isArray(x)) throw fault("shopping-malformed", "there is nothing to shop for", hint);
  const faults: Fault[] = [];
  const sheets = x.flatMap((each: unknown, i): readonly Sheet[] => {
    if (each instanceof Sheet) return [each];
    faults.push({ code: "shopping-malformed", path: [i], message: "this is not a sheet", hint });
    return [];
  });
  throwIfAny(faults);
  return ofSheets(sheets);
}

function planned(plan: Plan): ReadShopped {
  return {
    sheets: plan.meals.flatMap(({ batch }) => [...batch.values()]),
    eaters: () =>
      plan.portions.map(({ person, meal, dishes }) => ({
        person,
        meal,
        dish: undefined,
        portions: ONE,
        sheets: [...dishes.values()],
      })),
    names: {
      people: new Map(plan.people.map(({ id, name }) => [id, name])),
      meals: new Map(plan.meals.map(({ id, name }) => [id, name])),
    },
  };
}

function ofSheets(sheets: readonly Sheet[]): ReadShopped {
  const eaters = (): readonly Eater[] =>
    sheets.map((s) => ({
      person: undefined,
      meal: undefined,
      dish: s.name,
      portions: s.values.portions,
      sheets: [s],
    }));
  return { sheets, eaters, names: { people: new Map(), meals: new Map() } };
}
