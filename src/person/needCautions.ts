import { unusualLevel } from "./activity.ts";
import { type Caution, caution } from "./caution.ts";
import { stepCautions } from "./equationStep.ts";
import { isWithin, type NeedFigures } from "./need.ts";
import type { Facts } from "./person.ts";
import { personCautions } from "./personCautions.ts";
import type { StateEnergy } from "./stateCautions.ts";

/** What the need alone gives cause to say; `energy` as {@link personCautions} takes it. */
export function needCautions(facts: Facts, need: NeedFigures, energy?: StateEnergy): Caution[] {
  const unusual = unusualLevel(need.level, facts.age);
  return [
    ...(isWithin(need.equation, facts) ? [] : [caution("outside-population")]),
    ...stepCautions(facts, need),
    ...(unusual ? [caution("unusual-activity", unusual)] : []),
    ...personCautions(facts, energy),
  ];
}
