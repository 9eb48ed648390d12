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
import { type Fault, type Path, quote } from "../../number/error.ts";
import { ONE } from "../../number/exact.ts";
import { didYouMean } from "../../number/near.ts";
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
  /** Ids of the meals that can be named. */
  readonly meals: readonly string[];
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
  const isMeal = (meal: string | undefined, at: Path): boolean => {
    if (meal === undefined || meals.includes(meal)) return true;
    const few = meals.slice(0, 5).map((known) => quote(known));
    const hint = didYouMean(meal, meals, `use ${few.join(", ")}`);
    const message = `no meal is called ${quote(meal)}`;
    faults.push({ code: "plan-malformed", path: [...path, ...at], message, hint });
    return false;
  };
  for (const meal of Object.keys(byMeal)) isMeal(meal, ["byMeal", meal]);
  const gone = away.filter((meal, i) => isMeal(meal, ["away", i]));
  const body = readBody(faults, given, path, authority);
  const avoided = readAvoid(faults, given.avoid ?? [], [...path, "avoid"], foods);
  if (id === undefined) return undefined;
  const own = new Map(Object.entries<Asked | undefined>(byMeal));
  const usual: Want = { ...demands, path: [...path, "demands"] };
  const wants = meals.map((meal): [string, Want] => {
    const other = own.get(meal);
    return [meal, other ? { ...other, path: [...path, "byMeal", meal] } : usual];
  });
  return {
    id,
    name: name ?? id,
    wants: new Map(wants),
    away: new Set(gone),
    kitchen,
    lines: { given: lines, path: [...path, "lines"] },
    wishes: new LineWishes(),
    body,
    avoids: body ? [...avoided, ...declaredBy(body.facts, avoided, [...path, "person"])] : avoided,
    ...(meta !== undefined && { meta }),
  };
}
