import { anyText, type Json, meta, number } from "../../document/leaves.ts";
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
import { exactText } from "../../number/digits.ts";
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
import type { KeptAmounts } from "../share/lineFactors.ts";
import { LineWishes } from "./lineWishes.ts";
import { name } from "./name.ts";
import { avoidSchema, declaredBy, type KnownFoods, type ReadAvoid, readAvoid } from "./readAvoid.ts";
import { type BesidesFields, besidesSchema, type EatenBeside, readBesides } from "./readBesides.ts";
import { type ReadBody, readBody } from "./readBody.ts";
import { byMealId, type DailyFields, dailyShape, type ReadDaily, readDaily } from "./readDaily.ts";
import type { MealNames } from "./readMenu.ts";
import { type VersionFields, versionShape } from "./readVersions.ts";

/** What a portion is to bring, and where in the input that stands. */
export type Want = { readonly path: Path } & Asked;

type Asked =
  | { readonly kind: "target"; readonly aim: ReadTarget["aim"] }
  /** Of a meal of a day that is fitted as one: what it must bring by itself. */
  | { readonly kind: "demands" | "day"; readonly demands: readonly ReadDemand[] };

/** What someone wants of a meal as demands: a target is one figure, a factor asks for nothing. */
export function demandsOf(want: Want): readonly ReadDemand[] {
  if (want.kind !== "target") return want.demands;
  const { aim } = want;
  if (aim.of === "factor") return [];
  const { of, amount } = aim;
  const demand: Demand = { of, exactly: exactText(amount) };
  return [{ demand, subject: { kind: "amount", of }, least: amount, most: amount, firm: false }];
}

/** Someone to be fed, read. */
export interface ReadPerson {
  readonly id: string;
  readonly name: string;
  /** By the meal's id. */
  readonly wants: ReadonlyMap<string, Want>;
  /** What their days are to bring; nothing where meals are planned one by one. */
  readonly daily: ReadDaily | undefined;
  readonly besides: readonly EatenBeside[];
  /** Portions that stay as they were, by the meal's id. */
  readonly keep: { readonly amounts: ReadonlyMap<string, KeptAmounts>; readonly path: Path };
  /** Ids of the meals that they are not there for. */
  readonly away: ReadonlySet<string>;
  /** Of one's own; the plan's where there is none. */
  readonly kitchen: Kitchen | undefined;
  /** Wishes for their additions, to be read where lines are known, and as they are then. */
  readonly lines: { readonly given: Readonly<Record<string, string>> | undefined; readonly path: Path };
  readonly wishes: LineWishes;
  /** Their own versions of dishes, as they were told. */
  readonly own: Pick<VersionFields, "instead" | "leaveOut">;
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
interface PersonFields extends DailyFields, VersionFields {
  readonly id: string;
  readonly name?: string;
  readonly person?: Person;
  readonly aim?: Aim;
  readonly avoid?: Parameters<typeof readAvoid>[1];
  readonly demands?: Asked;
  readonly byMeal?: { readonly [meal: string]: Asked };
  readonly away?: readonly string[];
  readonly kitchen?: Kitchen;
  readonly besides?: readonly BesidesFields[];
  readonly keep?: { readonly [meal: string]: KeptAmounts };
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
    ...dailyShape(),
    ...versionShape(),
    demands: optional(asked),
    byMeal: optional(byName(asked, { like: "{ breakfast: { energy: 450 } }" })),
    away: optional(list(anyText(), { like: '["dinner"]' })),
    kitchen: optional(kitchenGiven()),
    besides: optional(besidesSchema()),
    keep: optional(
      byName(byName(byName(number({ from: 0 }))), {
        like: '{ "mon/breakfast": { porridge: { oats: 60 } } }',
      }),
    ),
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
export function readEater(
  faults: Fault[],
  { id, name, demands, byMeal, away = [], kitchen, lines, meta, ...given }: Partial<PersonFields>,
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
  const body = readBody(faults, given, path, authority);
  const avoided = readAvoid(faults, given.avoid ?? [], [...path, "avoid"], foods);
  const asked = byMealId(byMeal ?? {}, meals, (name) =>
    faults.push(meals.unknown(name, [...path, "byMeal", name])),
  );
  const daily = readDaily(faults, given, path, meals, {
    body,
    byMeal: demands ? "demands" : byMeal && "byMeal",
  });
  if (id === undefined) return undefined;
  const wantOf = (meal: string): Want => {
    if (daily) return { kind: "day", demands: daily.limits.get(meal) ?? [], path: daily.path };
    const own = asked.get(meal);
    return own
      ? { ...own, path: [...path, "byMeal", meal] }
      : { ...(demands ?? OWN), path: [...path, "demands"] };
  };
  return {
    id,
    name: name ?? id,
    wants: new Map(meals.ids.map((meal) => [meal, wantOf(meal)])),
    daily,
    keep: {
      amounts: byMealId(given.keep ?? {}, meals, (name) =>
        faults.push(meals.unknown(name, [...path, "keep", name])),
      ),
      path: [...path, "keep"],
    },
    besides: readBesides(faults, given.besides ?? [], [...path, "besides"], meals),
    away: new Set(gone),
    kitchen,
    lines: { given: lines, path: [...path, "lines"] },
    wishes: new LineWishes(),
    own: {
      ...(given.instead && { instead: given.instead }),
      ...(given.leaveOut && { leaveOut: given.leaveOut }),
    },
    body,
    avoids: body ? [...avoided, ...declaredBy(body.facts, avoided, [...path, "person"])] : avoided,
    ...(meta !== undefined && { meta }),
  };
}
