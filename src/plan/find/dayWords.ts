import { type Language, say } from "../../document/language.ts";
import { showFigure, showPercent } from "../../measure/showFigure.ts";
import { absolute, type Exact, equals, ZERO } from "../../number/exact.ts";
import { isExact } from "../../scale/engine/constraints.ts";
import type { Dish, LineAt } from "../../scale/engine/model.ts";
import type { InTheWay } from "../../scale/engine/open.ts";
import type { ReadDemand, Subject } from "../../scale/engine/readDemand.ts";
import type { FitOutcome } from "../../scale/fit/answer.ts";
import { subjectName, subjectUnit } from "../../scale/fit/words.ts";
import { inSentence } from "../../sheet/names.ts";

/** Says what a day misses, and what cannot stand together in it, in a language: dishes and foods by their names. */
export class DayWords {
  readonly #dishes: readonly Dish[];
  readonly #language: Language;

  constructor(dishes: readonly Dish[], language: Language) {
    this.#dishes = dishes;
    this.#language = language;
  }

  /** What is asked and by how much it is missed: `protein at least 60 g: 4 g short, 56 g in all`. */
  missed({ subject, least, most }: ReadDemand, { brings, miss, bound }: FitOutcome): string {
    const asked = this.#asked(subject, least, most);
    if (brings === null || miss.n === 0n)
      return this.#say("{demand}: there is nothing to take it of", { demand: asked });
    const brought = this.#figure(subject, brings);
    const known = bound === "at-least" ? this.#say("at least {figure}", { figure: brought }) : brought;
    const gaps = { demand: asked, size: this.#difference(subject, absolute(miss)), brought: known };
    return this.#say(
      miss.n < 0n ? "{demand}: {size} short, {brought} in all" : "{demand}: {size} over, {brought} in all",
      gaps,
    );
  }

  /** What of a set cannot stand with the others. */
  standing(standing: InTheWay): string {
    const { side } = standing;
    const at = (atLeast: string, atMost: string, gaps: { readonly [name: string]: string }): string =>
      this.#say(side === "least" ? atLeast : atMost, gaps);
    if (standing.on === "common")
      return at(
        "all dishes at least {times} times their recipes",
        "all dishes at most {times} times their recipes",
        { times: this.#times(standing.bound) },
      );
    if (standing.on === "range") {
      const { mover, bound } = standing;
      const dish = this.#dishName(mover.dish);
      const own = mover.kind === "part" ? mover.name.slice(mover.name.lastIndexOf("/") + 1) : "";
      const line =
        mover.kind === "line" ? this.#lineName({ dish: mover.dish, line: mover.lines[0] ?? -1 }) : own;
      if (line === "")
        return at("{dish} at least {times} times its recipe", "{dish} at most {times} times its recipe", {
          dish,
          times: this.#times(bound),
        });
      return at(
        "{line} at least {times} times its part of {dish}",
        "{line} at most {times} times its part of {dish}",
        { line, dish, times: this.#times(bound) },
      );
    }
    const { on, least, most } = standing.constraint;
    const end = standing.constraint[side] ?? ZERO;
    switch (on.kind) {
      case "sheet": {
        const place = this.#dishes.findIndex(({ name }) => name === on.name);
        return at("{dish} at least {times} times its recipe", "{dish} at most {times} times its recipe", {
          dish: this.#dishName(place),
          times: this.#times(end),
        });
      }
      case "share":
        return at(
          "{meal} at least {share} of the day's energy",
          "{meal} at most {share} of the day's energy",
          { meal: on.name, share: showPercent(end, { significant: 3, language: this.#language }) },
        );
      case "line": {
        const grams = this.#grams(least ?? most ?? ZERO);
        const line = this.#lineName(on);
        if (on.isDose) return this.#say("{line} {grams} a portion, the same for everyone", { line, grams });
        return at("{line} at least {grams} a portion", "{line} at most {grams} a portion", { line, grams });
      }
      case "demand": {
        const { subject, firm } = on.demand;
        const asked = isExact(standing.constraint)
          ? this.#asked(subject, least, most)
          : side === "least"
            ? this.#asked(subject, end, undefined)
            : this.#asked(subject, undefined, end);
        return firm ? this.#say("{demand} (firm)", { demand: asked }) : asked;
      }
    }
  }

  #asked(subject: Subject, least: Exact | undefined, most: Exact | undefined): string {
    const of = this.#subject(subject);
    const figure = (end: Exact): string => this.#figure(subject, end);
    if (least && most)
      return equals(least, most)
        ? this.#say("{component} exactly {figure}", { component: of, figure: figure(least) })
        : this.#say("{component} {least} to {most}", {
            component: of,
            least: figure(least),
            most: figure(most),
          });
    return most
      ? this.#say("{component} at most {figure}", { component: of, figure: figure(most) })
      : this.#say("{component} at least {figure}", { component: of, figure: figure(least ?? ZERO) });
  }

  #subject(subject: Subject): string {
    return this.#say(subjectName(subject));
  }

  #figure(subject: Subject, f: Exact): string {
    const language = this.#language;
    if (subject.kind === "share") return showPercent(f, { significant: 3, language });
    const unit = subjectUnit(subject);
    return showFigure(f, { significant: 4, language, ...(unit !== "" && { unit }) });
  }

  #difference(subject: Subject, f: Exact): string {
    if (subject.kind !== "share") return this.#figure(subject, f);
    const points = this.#figure(subject, f).replace("%", "").trim();
    return this.#say("{points} percentage points", { points });
  }

  #dishName(place: number): string {
    return this.#say(this.#dishes[place]?.sheet.name ?? "");
  }

  #lineName({ dish, line }: LineAt): string {
    const name = this.#dishes[dish]?.sheet.plan.lines[line]?.source.name ?? "";
    return inSentence(this.#say(name), this.#language);
  }

  #times(f: Exact): string {
    return showFigure(f, { significant: 3, language: this.#language });
  }

  #grams(f: Exact): string {
    return showFigure(f, { unit: "g", language: this.#language });
  }

  #say(phrase: string, gaps: { readonly [name: string]: string } = {}): string {
    return say(this.#language, phrase, gaps);
  }
}
