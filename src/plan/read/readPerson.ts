import type { Json } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { collect, type Fault, fault, type Path, quote } from "../../number/error.ts";
import { toText } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import type { Authority } from "../../person/intakes/table.ts";
import type { Demand } from "../../scale/demand.ts";
import { type ReadDemand, readDemands } from "../../scale/fit/demands.ts";
import { type ReadTarget, type Target, targetSchema } from "../../scale/target.ts";
import type { PersonInput } from "../input.ts";
import { LineWishes } from "./lineWishes.ts";
import { type Given, kindOf, own, type PlanFaults } from "./planFaults.ts";
import { declaredBy, type KnownFoods, type ReadAvoid, readAvoid } from "./readAvoid.ts";
import { type ReadBody, readBody } from "./readBody.ts";
import { readPlace } from "./readKitchen.ts";

/** What a portion is to bring, and where in the input that stands. */
export type Want = { readonly path: Path } & (
  | { readonly kind: "target"; readonly aim: ReadTarget["aim"] }
  | { readonly kind: "demands"; readonly demands: readonly ReadDemand[] }
);

/** What someone wants of a meal as demands: a target is one figure, a factor asks for nothing. */
export function demandsOf(want: Want): readonly ReadDemand[] {
  if (want.kind === "demands") return want.demands;
  const { aim } = want;
  if (aim.of === "factor") return [];
  const { of, amount } = aim;
  const demand: Demand = { of, exactly: toText(amount) };
  return [{ demand, subject: { kind: "amount", of }, least: amount, most: amount, firm: false }];
}

/** Someone to be fed, read. */
export interface ReadPerson {
  readonly id: string;
  readonly name: string;
  /** By the meal's id. */
  readonly wants: ReadonlyMap<string, Want>;
  /** Ids of the meals that they are not there for. */
  readonly away: ReadonlySet<string>;
  /** Of one's own; the plan's where there is none. */
  readonly kitchen: Kitchen | undefined;
  /** Wishes for their additions, to be read where lines are known, and as they are then. */
  readonly lines: { readonly given: unknown; readonly path: Path };
  readonly wishes: LineWishes;
  readonly body: ReadBody | undefined;
  readonly avoids: readonly ReadAvoid[];
  readonly meta?: Json;
}

/** What of the plan a person's fields speak of. */
export interface PersonSetting {
  /** Ids of the meals that can be named. */
  readonly meals: readonly string[];
  /** Nothing where the recipes are refused. */
  readonly foods: KnownFoods | undefined;
  readonly authority: Authority | undefined;
}

/** The fields of a person. */
export const PERSON: readonly string[] = [
  "id",
  "name",
  "person",
  "aim",
  "avoid",
  "demands",
  "byMeal",
  "away",
  "kitchen",
  "lines",
  "meta",
] satisfies (keyof PersonInput)[];

/** Reads one person; nothing where some of it is refused. */
export function readPerson(
  faults: PlanFaults,
  given: Given,
  id: string | undefined,
  path: Path,
  { meals, foods, authority }: PersonSetting,
): ReadPerson | undefined {
  const name = faults.optionalName(given.name, [...path, "name"], "leave it out, or write a name");
  const usual = readWant(faults.all, given.demands, [...path, "demands"]);
  const byMeal = readByMeal(faults, given.byMeal, [...path, "byMeal"], meals);
  const away = readAway(faults, given.away, [...path, "away"], meals);
  const kitchen = readPlace(faults, given.kitchen, [...path, "kitchen"]);
  const body = readBody(faults, given, path, authority);
  const avoided = readAvoid(faults, given.avoid, [...path, "avoid"], foods);
  const meta = faults.meta(given, path);
  if (id === undefined || usual === undefined) return undefined;
  const wants = new Map(meals.map((meal) => [meal, byMeal.get(meal) ?? usual]));
  const avoids = body ? [...avoided, ...declaredBy(body.facts, avoided, [...path, "person"])] : avoided;
  const lines = { given: given.lines, path: [...path, "lines"] };
  const wishes = new LineWishes();
  return { id, name: name ?? id, wants, away, kitchen, lines, wishes, body, avoids, ...meta };
}

function readByMeal(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  meals: readonly string[],
): ReadonlyMap<string, Want> {
  const read = new Map<string, Want>();
  if (given === undefined) return read;
  const hint = "write demands by the meal's id: { breakfast: { energy: 450 } }";
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    faults.refuse(path, `byMeal is ${kindOf(given)}`, hint);
    return read;
  }
  for (const [meal, demands] of Object.entries(given)) {
    if (!isMeal(faults, meal, [...path, meal], meals)) continue;
    const want = readWant(faults.all, own(given as Given, meal), [...path, meal]);
    if (want && demands !== undefined) read.set(meal, want);
  }
  return read;
}

function readAway(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  meals: readonly string[],
): ReadonlySet<string> {
  if (given === undefined) return new Set();
  const hint = 'write the ids of meals: ["dinner"]';
  const all = faults.list(given, path, "away", hint) ?? [];
  return new Set(all.filter((meal, i): meal is string => isMeal(faults, meal, [...path, i], meals)));
}

function isMeal(faults: PlanFaults, given: unknown, path: Path, meals: readonly string[]): boolean {
  if (typeof given === "string" && meals.includes(given)) return true;
  const few = meals.slice(0, 5).map((name) => quote(name));
  const hint = didYouMean(given, meals, `use ${few.join(", ")}`);
  faults.refuse(path, `no meal is called ${quote(given)}`, hint);
  return false;
}

/** Nothing said is the recipes' own portion. */
function readWant(faults: Fault[], given: unknown, path: Path): Want | undefined {
  return collect(faults, path, (): Want => {
    if (Array.isArray(given)) {
      return { kind: "demands", path, demands: readDemands(given) };
    }
    if (typeof given !== "object" && given !== undefined) return refuseWant(given);
    if (given === null) return refuseWant(given);
    const target: Target = given ?? {};
    if (target.portions !== undefined) {
      const hint = "a person has one portion: for a larger one, ask for more, or give a factor";
      throw fault("target-malformed", "a number of portions for one person", hint, ["portions"]);
    }
    // Nothing asked is a factor of 1.
    return {
      kind: "target",
      path,
      aim: read(targetSchema(), { ...target, portions: 1 }, "target-malformed").aim,
    };
  });
}

function refuseWant(given: unknown): never {
  const hint = 'write a target, { energy: "650 kcal" }, or a list of demands';
  throw fault("target-malformed", `the demands are ${kindOf(given)}`, hint);
}
