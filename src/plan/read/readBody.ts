import { collect, type Path } from "../../number/error.ts";
import type { Aim } from "../../person/aim.ts";
import { type DayTarget, dayTarget } from "../../person/dayTarget.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../person/intakes/referenceIntakes.ts";
import type { Authority } from "../../person/intakes/table.ts";
import { needOf } from "../../person/need.ts";
import type { Facts, Person } from "../../person/person.ts";
import { readAim } from "../../person/readAim.ts";
import { readPerson } from "../../person/readPerson.ts";
import { type Given, kindOf, type PlanFaults } from "./planFaults.ts";

/** Someone's body, read, with an authority's figures for it where the plan names one. */
export class ReadBody {
  readonly facts: Facts;
  /** Their day by their aim; undefined if they have none. */
  readonly target: DayTarget | undefined;
  readonly #person: Person;
  readonly #authority: Authority | undefined;
  #intakes: ReferenceIntakes | undefined;

  constructor(person: Person, aim: Aim | undefined, authority: Authority | undefined) {
    this.target = aim && dayTarget(person, aim, authority ? { authority } : {});
    this.facts = readPerson(person);
    // What the caller does to theirs later is no matter of this plan.
    this.#person = { ...person };
    this.#authority = authority;
    // What the figures need is to be missed now, not when they are first looked at.
    if (authority && this.facts.activity !== undefined) needOf(this.facts);
  }

  /** Looked up once; nothing where the plan names no authority. */
  get intakes(): ReferenceIntakes | undefined {
    const energy = this.target?.energy.target;
    this.#intakes ??=
      this.#authority && referenceIntakes(this.#authority, this.#person, energy ? { energy } : {});
    return this.#intakes;
  }
}

/** Reads a person: `person-malformed`, and what the authority's figures need and is not said. */
export function readBody(
  faults: PlanFaults,
  { person, aim }: Given,
  path: Path,
  authority: Authority | undefined,
): ReadBody | undefined {
  if (person === undefined) {
    const hint = "say who they are in `person`, or leave the aim out";
    if (aim !== undefined) faults.refuse([...path, "aim"], "an aim of nobody", hint);
    return undefined;
  }
  // Whatever else they are, the readers of a person and of an aim refuse them.
  const body = collect(
    faults.all,
    [...path, "person"],
    () => new ReadBody(person as Person, undefined, authority),
  );
  if (aim === undefined) return body;
  if (!body) {
    collect(faults.all, [...path, "aim"], () => readAim(aim));
    return undefined;
  }
  return collect(faults.all, [...path, "aim"], () => new ReadBody(person as Person, aim as Aim, authority));
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
