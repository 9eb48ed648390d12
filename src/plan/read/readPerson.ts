import { anyText, type Json, meta } from "../../document/leaves.ts";
import { isRecord } from "../../document/safe.ts";
import {
  andThen,
  byName,
  choice,
  coded,
  fields,
  list,
  once,
  optional,
  readAs,
  type Schema,
} from "../../document/schema.ts";
import { type Kitchen, kitchenGiven } from "../../measure/kitchen.ts";
import { toText } from "../../number/digits.ts";
import type { Fault, Path } from "../../number/error.ts";
import { ONE } from "../../number/exact.ts";
import type { Aim } from "../../person/aim.ts";
import type { Authority } from "../../person/intakes/table.ts";
import type { Person } from "../../person/person.ts";
import { aimSchema } from "../../person/readAim.ts";
import { personSchema } from "../../person/readPerson.ts";
import type { Demand } from "../../scale/demand.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { demandsSchema } from "../../scale/fit/demands.ts";
import { wishesSchema } from "../../scale/round/wish.ts";
import { portionTarget, type ReadTarget } from "../../scale/target.ts";
import { LineWishes } from "./lineWishes.ts";
import { name } from "./name.ts";
import { avoidSchema, declaredBy, type KnownFoods, type ReadAvoid, readAvoid } from "./readAvoid.ts";
import { type ReadBody, readBody } from "./readBody.ts";
import type { MealNames } from "./readMenu.ts";

/** What a portion is to bring, and where in the input that stands. */
export type Want = { readonly path: Path } & Asked;

type Asked =
  | { readonly kind: "target"; readonly aim: ReadTarget["aim"] }
  | { readonly kind: "demands"; readonly demands: readonly ReadDemand[] };

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
  readonly lines: { readonly given: Readonly<Record<string, string>> | undefined; readonly path: Path };
  readonly wishes: LineWishes;
  readonly body: ReadBody | undefined;
  readonly avoids: readonly ReadAvoid[];
  readonly meta?: Json;
}

/** What of the plan a person's fields speak of. */
export interface PersonSetting {
  readonly meals: MealNames;
  /** Nothing where the recipes are refused. */
  readonly foods: KnownFoods | undefined;
  readonly authority: Authority | undefined;
}

/** A person's fields as they are read. */
interface PersonFields {
  readonly id: string;
  readonly name?: string;
  readonly person?: Person;
  readonly aim?: Aim;
  readonly avoid?: Parameters<typeof readAvoid>[1];
  readonly demands?: Asked;
  readonly byMeal?: { readonly [meal: string]: Asked };
  readonly away?: readonly string[];
  readonly kitchen?: Kitchen;
  readonly lines?: Readonly<Record<string, string>>;
  readonly meta?: Json;
}

/** The schema of someone to be fed. Their body and their aim are read with the plan's authority. */
export const eaterSchema: () => Schema<PersonFields> = /* @__PURE__ */ once(() => {
  const asked = askedSchema();
  return fields<PersonFields>({
    id: name(),
    name: optional(name()),
    person: optional(readAs(personSchema(), "a person", (given) => given as Person)),
    aim: optional(readAs(aimSchema(), "an aim", (given) => given as Aim)),
    avoid: optional(avoidSchema()),
    demands: optional(asked),
    byMeal: optional(byName(asked, { like: "{ breakfast: { energy: 450 } }" })),
    away: optional(list(anyText(), { like: '["dinner"]' })),
    kitchen: optional(kitchenGiven()),
    lines: optional(coded("rounding-malformed", wishesSchema())),
    meta: optional(meta()),
  });
});

/** What a portion is to bring: a target, or a list of demands. */
function askedSchema(): Schema<Asked> {
  const target = andThen(portionTarget(), (aim): Asked => ({ kind: "target", aim }));
  const demands = andThen(demandsSchema(), (demands): Asked => ({ kind: "demands", demands }));
  const pick = (given: unknown): Schema<Asked> | undefined =>
    Array.isArray(given) ? demands : isRecord(given) ? target : undefined;
  const expected = 'a target, { energy: "650 kcal" }, or a list of demands';
  return coded("target-malformed", choice<Asked>([target, demands], pick, expected));
}

/** Nothing said is the recipes' own portion. */
const OWN: Asked = { kind: "target", aim: { of: "factor", factor: ONE } };

/** Reads on from someone's fields; undefined where they cannot be named. */
export function readPerson(
  faults: Fault[],
  { id, name, demands = OWN, byMeal = {}, away = [], kitchen, lines, meta, ...given }: Partial<PersonFields>,
  path: Path,
  { meals, foods, authority }: PersonSetting,
): ReadPerson | undefined {
  const known = (named: readonly string[], meal: string, at: Path, days: boolean): readonly string[] => {
    // Where no meal could be read none can be told from a slip of the pen.
    if (named.length === 0 && meals.ids.length > 0) faults.push(meals.unknown(meal, [...path, ...at], days));
    return named;
  };
  const gone = away.flatMap((at, i) =>
    at === undefined ? [] : known(meals.within(at), at, ["away", i], true),
  );
  const own = Object.entries<Asked | undefined>(byMeal).map(([name, asked]) => {
    const at = ["byMeal", name];
    return { asked, at, named: known(meals.meals(name), name, at, false) };
  });
  const body = readBody(faults, given, path, authority);
  const avoided = readAvoid(faults, given.avoid ?? [], [...path, "avoid"], foods);
  if (id === undefined) return undefined;
  const usual: Want = { ...demands, path: [...path, "demands"] };
  const wants = new Map(meals.ids.map((meal): [string, Want] => [meal, usual]));
  // What speaks of one day's meal wins over what speaks of every day's.
  for (const { asked, at, named } of own.sort((a, b) => b.named.length - a.named.length)) {
    for (const meal of asked ? named : []) wants.set(meal, { ...asked, path: [...path, ...at] } as Want);
  }
  return {
    id,
    name: name ?? id,
    wants,
    away: new Set(gone),
    kitchen,
    lines: { given: lines, path: [...path, "lines"] },
    wishes: new LineWishes(),
    body,
    avoids: body ? [...avoided, ...declaredBy(body.facts, avoided, [...path, "person"])] : avoided,
    ...(meta !== undefined && { meta }),
  };
}
