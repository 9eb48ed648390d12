import { collect, type Fault, type Path } from "../../number/error.ts";
import type { Aim } from "../../person/aim.ts";
import { type DayTarget, dayTarget } from "../../person/dayTarget.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../person/intakes/referenceIntakes.ts";
import type { Authority } from "../../person/intakes/table.ts";
import { needOf } from "../../person/need.ts";
import type { Facts, Person } from "../../person/person.ts";
import { readAim } from "../../person/readAim.ts";
import { personFacts } from "../../person/readPerson.ts";

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
    this.facts = personFacts(person);
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
  faults: Fault[],
  { person, aim }: { readonly person?: Person; readonly aim?: Aim },
  path: Path,
  authority: Authority | undefined,
): ReadBody | undefined {
  if (person === undefined) {
    const hint = "say who they are in `person`, or leave the aim out";
    if (aim !== undefined)
      faults.push({ code: "plan-malformed", path: [...path, "aim"], message: "an aim of nobody", hint });
    return undefined;
  }
  // Whatever else they are, the readers of a person and of an aim refuse them.
  const body = collect(faults, [...path, "person"], () => new ReadBody(person, undefined, authority));
  if (aim === undefined) return body;
  if (!body) {
    collect(faults, [...path, "aim"], () => readAim(aim));
    return undefined;
  }
  return collect(faults, [...path, "aim"], () => new ReadBody(person, aim, authority));
}
