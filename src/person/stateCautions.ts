import { type Caution, caution, withDiets } from "./caution.ts";
import { type EnergyAddition, energyAdditions } from "./energyAdditions.ts";
import type { ReferenceIntakes } from "./intakes/referenceIntakes.ts";
import type { Authority } from "./intakes/table.ts";
import type { Facts } from "./person.ts";

/** What a day's energy holds for pregnancy or breastfeeding, and by whose figures. */
export interface StateEnergy {
  readonly addition?: EnergyAddition;
  /** Whose figures were looked in; nothing where the energy was given by the caller. */
  readonly authority?: Authority;
}

/** A state's caution, and the name of the state. */
interface StateCaution {
  readonly state: "pregnant" | "breastfeeding";
  readonly caution: Caution;
}

const bodies: { readonly [A in Authority]: string } = {
  uk: "SACN (UK)",
  us: "the Institute of Medicine (US, Canada)",
  eu: "EFSA",
  nordic: "the Nordic Nutrition Recommendations of 2023",
  who: "WHO and FAO",
};

/** What is said of each state: of whom, what energy is for, when, how a figure is missed, and what it costs. */
const words = {
  pregnant: {
    of: "Pregnant",
    for: "pregnancy",
    when: "in this trimester",
    published: "for this age",
    costs: "what pregnancy adds",
  },
  breastfeeding: {
    of: "Breastfeeding",
    for: "breastfeeding",
    when: "in these months",
    published: "for this age and these months",
    costs: "what milk costs",
  },
} as const;

/** What pregnancy and breastfeeding give cause to say of a day's energy: just what was done about it. */
export function stateCautions(facts: Facts, energy?: StateEnergy): StateCaution[] {
  const states = [
    ...(facts.pregnant ? (["pregnant"] as const) : []),
    ...(facts.breastfeeding ? (["breastfeeding"] as const) : []),
  ];
  return states.map((state) => ({ state, caution: stateCaution(state, energy) }));
}

/** What the energy of an authority's reference intakes holds for the state of the person they were read for. */
export function stateEnergyOf(intakes: ReferenceIntakes): StateEnergy | undefined {
  const { reference } = intakes.get("energy");
  if (!reference) return undefined;
  const { addition, leavesOut } = reference;
  return {
    ...(addition && { addition }),
    ...((addition || leavesOut) && { authority: intakes.authority }),
  };
}

function stateCaution(state: StateCaution["state"], energy: StateEnergy | undefined): Caution {
  if (!energy) return caution(state);
  const { of, for: what, when, published, costs } = words[state];
  const { addition, authority } = energy;
  const say = (done: string, said?: Pick<Caution, "source" | "check">): Caution =>
    caution(
      state,
      state === "pregnant" ? withDiets(`${of}: ${done}.`, said) : { text: `${of}: ${done}.`, ...said },
    );
  if (addition?.for === what) {
    const body = bodies[addition.authority];
    const done = addition.value.isZero()
      ? `${body} adds no energy for ${what} ${when}, and none was added`
      : `the ${addition.value} kcal a day that ${body} adds for ${what} ${when} are counted in`;
    return say(done, { source: addition.source, check: addition.check });
  }
  if (addition)
    return say(`only what ${addition.for} adds is counted in, and this energy leaves out ${costs}`);
  if (authority === undefined)
    return say(`the day's energy was given, and taken as it is: let it hold ${costs}`);
  const own = energyAdditions[authority];
  const lack = own ? `has no figure ${published}` : "has no figure here";
  const done = `${bodies[authority]} ${lack}, and this energy leaves out ${costs}`;
  return own ? say(done, { source: own.source, check: "unverified" }) : say(done);
}
