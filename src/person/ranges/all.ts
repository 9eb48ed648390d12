import { together } from "../../number/error.ts";
import { exact } from "../../number/exact.ts";
import { freezeAll } from "../../number/freeze.ts";
import { compareRatios } from "../../number/ratio.ts";
import { checkAuthority } from "../intakes/authority.ts";
import type { Authority } from "../intakes/table.ts";
import type { Facts, Person } from "../person.ts";
import { personFacts } from "../readPerson.ts";
import { euRanges } from "./eu.ts";
import type { EnergyRange } from "./range.ts";
import { ukRanges } from "./uk.ts";
import { usRanges } from "./us.ts";
import { whoRanges } from "./who.ts";

/** Every published range of shares of energy; those of the Nordic countries were not read. */
export const energyRanges: { readonly [A in Authority]: readonly EnergyRange[] } = /* @__PURE__ */ freezeAll({
  uk: ukRanges,
  us: usRanges,
  eu: euRanges,
  nordic: [],
  who: whoRanges,
});

/**
 * The ranges of shares of energy that an authority publishes for a person's age.
 *
 * Throws `person-malformed`, `authority-unknown`.
 */
export function energyRangesFor(authority: Authority, person: Person): readonly EnergyRange[] {
  const { facts } = together({
    authority: () => checkAuthority(authority),
    facts: () => personFacts(person),
  });
  return rangesOf(authority, facts);
}

/** The ranges of an authority for someone's age. */
export function rangesOf(authority: Authority, { age }: Facts): readonly EnergyRange[] {
  return energyRanges[authority].filter(
    ({ from, below }) =>
      compareRatios(age, exact(from)) >= 0 && (below === undefined || compareRatios(age, exact(below)) < 0),
  );
}
