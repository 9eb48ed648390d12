import { asWritten } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { coded, fields, once, optional, type Schema } from "../document/schema.ts";
import { components } from "../food/components.ts";
import { share } from "../measure/share.ts";
import { together } from "../number/error.ts";
import { type Exact, ONE, type Value } from "../number/exact.ts";
import type { Demand } from "../scale/demand.ts";
import type { Aim } from "./aim.ts";
import { type Caution, practitionerNote } from "./caution.ts";
import { type DayTarget, dayTarget } from "./dayTarget.ts";
import { checkAuthority } from "./intakes/authority.ts";
import { guidanceCautions, guidanceTaken } from "./intakes/guidance.ts";
import {
  type IntakeOptions,
  intakeShape,
  type ReferenceIntakes,
  referenceIntakes,
} from "./intakes/referenceIntakes.ts";
import type { Authority } from "./intakes/table.ts";
import { upperLimits } from "./intakes/upperLimits.ts";
import type { Person } from "./person.ts";
import { personCautions } from "./personCautions.ts";
import { readAim } from "./readAim.ts";
import { personFacts } from "./readPerson.ts";
import { mealDemands } from "./shareDay.ts";
import { stateEnergyOf } from "./stateCautions.ts";

/** Options of {@link demandsFor}. */
export interface DemandsOptions extends IntakeOptions {
  /** What the day is to bring; upper levels alone, unless told. */
  readonly aim?: Aim;
  /** The meal's part of what the day is to bring: `0.25`, `"1/4"`, `"25 %"`; all of it, unless told. */
  readonly share?: Value;
  /**
   * The meal's part of each upper level: `share`, unless told, so that meals together stay under a day's
   * level. `1` lets one portion take all of it, and then three meals may come to three times a level.
   */
  readonly limits?: Value;
  /**
   * What guidance levels and safe levels of intake are: told in a caution, unless told otherwise, or
   * firm limits as levels set from harm are.
   */
  readonly guidance?: "tell" | "limit";
}

/** What a portion must meet for one person. */
export interface DemandsFor {
  /** As `fit` takes them: the aim's first, then upper levels, which are firm. */
  readonly demands: readonly Demand[];
  readonly cautions: readonly Caution[];
  /** How the day's energy came about, where there is an aim. */
  readonly energy?: DayTarget["energy"];
  readonly intakes: ReferenceIntakes;
  readonly note: string;
}

/**
 * A person's demands on a portion, for `fit`: what an aim asks of the meal, and an authority's upper
 * levels as firm limits, so that no portion is fitted past its part of one. A level is of a whole day:
 * a meal that is given a share of the day gets the same share of each level, unless `limits` says
 * otherwise. Only levels that were set from harm and count what food brings make a limit: a caution
 * names guidance levels and safe levels of intake, which do not (see {@link upperLimits}). A nutrient
 * without a level is not proven safe in any amount: `intakes.withoutUpper` lists them, and a caution
 * names those that have a level for people of other ages alone, as the UK's for adults. Where lines are
 * silent, `fit` lists the limit as not proven.
 *
 * Throws the codes of `dayTarget` and `referenceIntakes`, and `shares-impossible`.
 *
 * @example
 * ```ts
 * const cox: Person = { sex: "female", age: 22, mass: "52 kg", height: "1.60 m", activity: "active" };
 * const { demands } = demandsFor(cox, "eu", { aim: { weight: "hold", protein: { perKg: "1.6" } }, share: "1/4" });
 * demands.find((demand) => demand.of === "protein"); // => { of: 'protein', exactly: '20.8' }
 * demands.find((demand) => demand.of === "iodine"); // => { of: 'iodine', most: '150', firm: true }
 * ```
 */
export function demandsFor(person: Person, authority: Authority, how: DemandsOptions = {}): DemandsFor {
  const { asked } = together({
    asked: () => read(demandsHow(), how, "aim-malformed"),
    authority: () => checkAuthority(authority),
    person: () => personFacts(person),
    aim: () => how?.aim !== undefined && readAim(how.aim),
  });
  const { aim, share = ONE, limits = share, guidance = "tell", ...options } = asked;
  const day = aim === undefined ? undefined : dayTarget(person, aim, { authority });
  const energy = options.energy ?? day?.energy.target;
  const intakes = referenceIntakes(authority, person, {
    ...options,
    ...(energy !== undefined && { energy }),
  });
  return {
    demands: [...(day ? mealDemands(day.demands, share) : []), ...upperLimits(intakes, limits, { guidance })],
    cautions: [
      ...(day ? day.cautions : personCautions(personFacts(person), stateEnergyOf(intakes))),
      ...inPart(intakes),
      ...unlimited(intakes),
      ...(guidance === "tell" ? guidanceCautions(intakes) : []),
    ],
    ...(day && { energy: day.energy }),
    intakes,
    note: practitionerNote,
  };
}

type ReadOptions = Omit<DemandsOptions, "energy" | "share" | "limits"> & {
  readonly [Field in "energy" | "share" | "limits"]?: Exact;
};

const demandsHow: () => Schema<ReadOptions> = /* @__PURE__ */ once(() => {
  const part = optional(coded("shares-impossible", share()));
  return fields<ReadOptions>({
    ...intakeShape(),
    aim: optional(asWritten<Aim>()),
    share: part,
    limits: part,
    guidance: optional(guidanceTaken()),
  });
});

/** Says what of an authority is not here: demands that are not there limit nothing. */
function inPart({ missing }: ReferenceIntakes): Caution[] {
  if (missing === undefined) return [];
  const source = "the authority's own tables, read in part";
  return [{ code: "authority-in-part", text: missing, source, check: "unverified" }];
}

/** Says what is limited for people of other ages, and for this one is not. */
function unlimited({ withoutUpper }: ReferenceIntakes): Caution[] {
  const names = withoutUpper.filter(({ forOthers }) => forOthers).map(({ of }) => components[of].name);
  if (names.length === 0) return [];
  return [
    {
      code: "no-upper-level",
      text: `No upper level applies to ${names.join(", ")}: those of this authority are for people of other ages, and nothing here limits them.`,
      source: "the authority's own tables, as named with each level",
      check: "unverified",
    },
  ];
}
