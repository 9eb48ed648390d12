import { collect, type Path } from "../../number/error.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../person/intakes/referenceIntakes.ts";
import type { Authority } from "../../person/intakes/table.ts";
import { needOf } from "../../person/need.ts";
import type { Facts, Person } from "../../person/person.ts";
import { readPerson } from "../../person/readPerson.ts";
import { kindOf, type PlanFaults } from "../given.ts";

/** Someone's body, read, with an authority's figures for it where the plan names one. */
export class ReadBody {
  readonly facts: Facts;
  readonly #person: Person;
  readonly #authority: Authority | undefined;
  #intakes: ReferenceIntakes | undefined;

  constructor(person: Person, authority: Authority | undefined) {
    this.facts = readPerson(person);
    // What the caller does to theirs later is no matter of this plan.
    this.#person = { ...person };
    this.#authority = authority;
    // What the figures need is to be missed now, not when they are first looked at.
    if (authority && this.facts.activity !== undefined) needOf(this.facts);
  }

  /** Looked up once; nothing where the plan names no authority. */
  get intakes(): ReferenceIntakes | undefined {
    this.#intakes ??= this.#authority && referenceIntakes(this.#authority, this.#person);
    return this.#intakes;
  }
}

/** Reads a person: `person-malformed`, and what the authority's figures need and is not said. */
export function readBody(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  authority: Authority | undefined,
): ReadBody | undefined {
  if (given === undefined) return undefined;
  // Whatever else it is, the person's own reader refuses it.
  return collect(faults.all, path, () => new ReadBody(given as Person, authority));
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
