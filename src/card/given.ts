import { fault, kindOf, throwIfAny } from "../number/error.ts";
import { Comparison } from "../person/compare/comparison.ts";
import { Plan } from "../plan/planned.ts";
import { PlanFaults } from "../plan/read/planFaults.ts";
import type { CardAbout, CardCaution, CardDay, CardHow } from "./how.ts";

const HOW: readonly string[] = [
  "date",
  "version",
  "meals",
  "components",
  "day",
  "cautions",
  "personal",
  "about",
  "energyBy",
  "language",
] satisfies (keyof CardHow)[];
const ABOUT: readonly string[] = ["mass", "age", "conditions"] satisfies (keyof CardAbout)[];
const DAY: readonly string[] = ["of", "reference", "upper"] satisfies (keyof CardDay)[];

/**
 * Checks what a card is asked for: kinds of values alone, what they say is read where it is used.
 * Throws `card-malformed`, all faults at once.
 */
export function checkCard(plan: unknown, how: unknown): void {
  if (!(plan instanceof Plan)) {
    const hint = "make one with portionPlan({ … })";
    throw fault("card-malformed", `expected a plan, got ${kindOf(plan)}`, hint, ["plan"]);
  }
  const faults = new CardFaults("card-malformed");
  const given = faults.record(how, [], "the card's options", HOW, `give an object of ${HOW.join(", ")}`);
  if (given) checkFields(given, faults);
  throwIfAny(faults.all);
}

type Fields = { readonly [field: string]: unknown };

function checkFields(given: Fields, faults: CardFaults): void {
  const { date, version, meals, components, day, cautions, personal, about } = given;
  faults.text(date, ["date"]);
  faults.text(version, ["version"]);
  faults.texts(meals, ["meals"], "list ids of the plan's meals");
  faults.texts(components, ["components"], 'list components: ["iron", "fibre"]');
  if (personal !== undefined && personal !== "hide" && personal !== "show")
    faults.refuse(["personal"], "personal is neither of its two words", 'write "hide" or "show"');
  if (about !== undefined) {
    const said = faults.record(about, ["about"], "about", ABOUT, "give mass, age or conditions as text");
    faults.text(said?.mass, ["about", "mass"]);
    faults.text(said?.age, ["about", "age"]);
    faults.texts(said?.conditions, ["about", "conditions"]);
  }
  if (day !== undefined && !(day instanceof Comparison)) {
    const hint = 'list figures, such as { of: "iron", reference: { value: 16, source: "…" } }';
    const entries = faults.list(day, ["day"], "day", hint) ?? [];
    entries.forEach((entry, i) => {
      const read = faults.record(entry, ["day", i], "a day's entry", DAY, hint);
      for (const field of ["reference", "upper"]) {
        if (read?.[field] === undefined) continue;
        // A published figure says more than a card shows, so fields that are not known here may stand.
        const figure = read[field];
        const path = ["day", i, field];
        if (typeof figure !== "object" || figure === null)
          faults.refuse(path, `${field} is ${kindOf(figure)}`, "give its value and its source");
        else faults.must((figure as Fields).source, [...path, "source"]);
      }
    });
  }
  if (cautions !== undefined) {
    const hint = 'list cautions, such as { text: "Hot.", source: "the cook" }';
    const entries = faults.list(cautions, ["cautions"], "cautions", hint) ?? [];
    entries.forEach((entry, i) => {
      if (typeof entry !== "object" || entry === null)
        faults.refuse(["cautions", i], `a caution is ${kindOf(entry)}`, hint);
      else {
        const { text, code, source, because } = entry as { readonly [F in keyof CardCaution]: unknown };
        faults.must(text, ["cautions", i, "text"]);
        faults.text(code, ["cautions", i, "code"]);
        faults.text(source, ["cautions", i, "source"]);
        faults.texts(because, ["cautions", i, "because"]);
      }
    });
  }
}

class CardFaults extends PlanFaults {
  /** Text, where it is given. */
  text(value: unknown, path: readonly (string | number)[]): void {
    if (value !== undefined) this.must(value, path);
  }

  must(value: unknown, path: readonly (string | number)[]): void {
    if (typeof value !== "string")
      this.refuse(path, `expected text, got ${kindOf(value)}`, "write it as text");
  }

  texts(value: unknown, path: readonly (string | number)[], hint = "give a list of texts"): void {
    if (value === undefined) return;
    const all = this.list(value, path, String(path.at(-1)), hint);
    all?.forEach((each, i) => {
      this.must(each, [...path, i]);
    });
  }
}
