import { anyText, thing } from "../../document/leaves.ts";
import { byName, list, optional, type Shape } from "../../document/schema.ts";
import { type Fault, type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import { namesAny } from "../../recipe/stepLines.ts";
import { nameAfter } from "../../sheet/nameAfter.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { onlyLines } from "../share/lines.ts";
import { onePortion, type ReadMeal } from "./readMeal.ts";

/** The fields that speak of a person's own versions of dishes, as they are read. */
export interface VersionFields {
  readonly instead?: { readonly [dish: string]: Sheet };
  readonly leaveOut?: readonly string[];
}

/** The schemas of those fields. */
export function versionShape(): Shape<VersionFields> {
  const sheet = thing(
    "a sheet, made with sheet(recipe, foods)",
    (given): given is Sheet => given instanceof Sheet,
    // In a stored plan sheets are named by their place.
    { type: "integer", minimum: 0 },
  );
  return {
    instead: optional(byName(sheet, { like: "{ stew: withoutMilk }" })),
    leaveOut: optional(list(anyText(), { like: '["stew/milk"]' })),
  };
}

/** A person's own sheets, by the meal's id and the dish. */
export type OwnSheets = ReadonlyMap<string, ReadonlyMap<string, Sheet>>;

interface DishAt {
  readonly meal: ReadMeal;
  readonly dish: string;
  readonly sheet: Sheet;
  /** What it can be called, the widest first: `stew`, `supper/stew`, `mon/supper/stew`. */
  readonly names: readonly string[];
}

/** Makes each person's own versions, each once, so that a dish that is served again has the same. */
export class VersionReader {
  readonly #dishes: readonly DishAt[];
  readonly #left = new Map<Sheet, Map<string, Sheet>>();

  constructor(meals: readonly ReadMeal[]) {
    this.#dishes = meals.flatMap((meal) =>
      [...meal.dishes].map(([dish, sheet]): DishAt => {
        return { meal, dish, sheet, names: [dish, `${meal.own.id}/${dish}`, `${meal.id}/${dish}`] };
      }),
    );
  }

  /** What someone eats instead, and without: one portion of each. */
  read(faults: Fault[], { instead = {}, leaveOut = [] }: Partial<VersionFields>, path: Path): OwnSheets {
    const found = new Map<DishAt, Sheet>();
    for (const name of byWidth(Object.keys(instead), this.#dishes)) {
      const own = (instead as { readonly [dish: string]: Sheet | undefined })[name];
      const at = this.#dishes.filter(({ names }) => names.includes(name));
      if (at.length === 0) this.#unknown(faults, name, [...path, "instead", name]);
      for (const dish of own ? at : []) found.set(dish, onePortion(own as Sheet));
    }
    const out = new Map<DishAt, string[]>();
    leaveOut.forEach((given, i) => {
      if (given === undefined) return;
      const cut = given.lastIndexOf("/");
      const [name, key] = [given.slice(0, Math.max(0, cut)), given.slice(cut + 1)];
      const at = this.#dishes.filter(({ names }) => names.includes(name));
      const having = at.filter((dish) => hasLine(found.get(dish) ?? dish.sheet, key));
      if (at.length === 0) this.#unknown(faults, name, [...path, "leaveOut", i]);
      else if (having.length === 0) {
        const keys = at.flatMap(({ sheet }) => sheet.lines.map((line) => line.key));
        const hint = didYouMean(key, keys, "use a key from the dish's lines, after its name: stew/milk");
        const message = `${quote(name)} has no line ${quote(key)}`;
        faults.push({ code: "line-unknown", path: [...path, "leaveOut", i], message, hint });
      }
      for (const dish of having) out.set(dish, [...(out.get(dish) ?? []), key]);
    });
    for (const [dish, keys] of out) found.set(dish, this.#without(found.get(dish) ?? dish.sheet, keys));
    const byMeal = new Map<string, Map<string, Sheet>>();
    for (const [{ meal, dish }, own] of found) {
      byMeal.set(meal.id, (byMeal.get(meal.id) ?? new Map()).set(dish, own));
    }
    return byMeal;
  }

  #without(s: Sheet, keys: readonly string[]): Sheet {
    const known = this.#left.get(s) ?? new Map<string, Sheet>();
    this.#left.set(s, known);
    const id = [...keys].sort().join("\n");
    const kept = s.plan.lines.flatMap(({ line }, i) => (keys.includes(line.key) ? [] : [i]));
    const made = known.get(id) ?? said(onlyLines(s, kept), s, keys);
    known.set(id, made);
    return made;
  }

  #unknown(faults: Fault[], name: string, path: Path): void {
    const names = [...new Set(this.#dishes.flatMap((each) => each.names))];
    const few = [...new Set(this.#dishes.map(({ dish }) => quote(dish)))].slice(0, 5);
    const hint = didYouMean(name, names, `use ${few.join(", ")}`);
    faults.push({ code: "plan-malformed", path, message: `no dish is called ${quote(name)}`, hint });
  }
}

/** With a name that speaks of nothing which is not in it, and no step of nothing but that. */
function said({ plan, values }: Sheet, before: Sheet, keys: readonly string[]): Sheet {
  const { method, ...rest } = plan.recipe;
  const speaks = namesAny((key) => !keys.includes(key));
  const steps = method?.filter((_, i) => speaks(before.origin.method?.[i] ?? ""));
  const recipe = {
    ...rest,
    name: nameAfter(before, { remove: keys }),
    ...(steps?.length && { method: steps }),
  };
  return new Sheet(plan.withLines(plan.lines, recipe), values);
}

/** Names that speak of more dishes come first, so that the narrower wins. */
function byWidth(names: readonly string[], dishes: readonly DishAt[]): readonly string[] {
  const width = (name: string): number => dishes.filter((dish) => dish.names.includes(name)).length;
  return [...names].sort((a, b) => width(b) - width(a));
}

function hasLine({ plan }: Sheet, key: string): boolean {
  return plan.lines.some(({ line }) => line.key === key);
}
