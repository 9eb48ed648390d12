import { collect, type Path } from "../../number/error.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../person/intakes/referenceIntakes.ts";
import type { Authority } from "../../person/intakes/table.ts";
import type { Facts, Person } from "../../person/person.ts";
import { readPerson } from "../../person/readPerson.ts";
import { kindOf, type PlanFaults } from "../given.ts";

/** Someone's body, read, with an authority's figures for it where the plan names one. */
export interface ReadBody {
  readonly facts: Facts;
  readonly intakes: ReferenceIntakes | undefined;
}

/** Reads a person: `person-malformed`, and what the authority's figures need and is not said. */
export function readBody(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  authority: Authority | undefined,
): ReadBody | undefined {
  if (given === undefined) return undefined;
  return collect(faults.all, path, () => {
    // Whatever else it is, the person's own reader refuses it.
    const person = given as Person;
    const facts = readPerson(person);
    return { facts, intakes: authority && referenceIntakes(authority, person) };
  });
}

const AUTHORITIES: readonly Authority[] = ["uk", "us", "eu"];

export function readAuthority(faults: PlanFaults, given: unknown): Authority | undefined {
  if (given === undefined) return undefined;
  const authority = AUTHORITIES.find((each) => each === given);
  if (authority) return authority;
  faults.all.push({
    code: "authority-unknown",
    path: ["authority"],
    message: `the authority is ${kindOf(given)}`,
    hint: 'choose "uk", "us" or "eu"',
  });
  return undefined;
}
