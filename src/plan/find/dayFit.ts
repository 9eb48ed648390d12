import { britishEnglish, type Language, say } from "../../document/language.ts";
import { type Exact, over } from "../../number/exact.ts";
import { ToldResult } from "../../number/told.ts";
import { pointValue } from "../../scale/engine/linear.ts";
import { gather } from "../../scale/engine/model.ts";
import type { InTheWay } from "../../scale/engine/open.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import type { SolvedMet, SolvedMissed } from "../../scale/engine/solveTask.ts";
import { type Answer, type FitOutcome, type NotProven, notProvenOf } from "../../scale/fit/answer.ts";
import { standingTogether } from "../../scale/fit/conflict.ts";
import type { DayTask } from "./dayTask.ts";
import { DayWords } from "./dayWords.ts";

/** What a meal brings of a day's energy. */
export interface DayShare {
  readonly meal: string;
  /** What it was to bring, 0 to 1: as told, or as the recipes are written. */
  readonly asked: Exact;
  /** Ends that it had to keep to; nothing where no shares were told. */
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  /** Its figure; nothing where the day has no energy. */
  readonly brings: Exact | undefined;
}

/** How a person's day was fitted as one, before a kitchen measures. */
export class DayFit extends ToldResult {
  readonly status: "met" | "out-of-reach" | "not-served";
  readonly #day: DayTask;
  readonly #solved: SolvedMet | SolvedMissed;
  readonly #answer: Answer | undefined;
  readonly #texts = new Map<Language, string>();
  #standing: readonly InTheWay[] | undefined;

  /** @internal */
  constructor(day: DayTask, solved: SolvedMet | SolvedMissed) {
    super();
    this.#day = day;
    this.#solved = solved;
    this.#answer = solved.found ? solved.answer : solved.nearest();
    this.status = solved.found ? "met" : this.#answer ? "out-of-reach" : "not-served";
  }

  /** @internal */
  day(): DayTask {
    return this.#day;
  }

  /** @internal What the day has to bring, as read, for so much of it as is eaten in the plan. */
  asked(): readonly ReadDemand[] {
    return this.#day.demands;
  }

  /** How much of a whole day is eaten in the plan, 0 to 1: what is asked of the day is asked of so much. */
  get eaten(): Exact {
    return this.#day.shares.eaten;
  }

  /** What was asked of the day, and what it brings. */
  get outcomes(): readonly FitOutcome[] {
    return this.#outcomesOf(({ within }) => within === undefined);
  }

  /** What a meal had to meet by itself, by its id in the plan. */
  limits(meal: string): readonly FitOutcome[] {
    const limits = this.#day.limits.get(meal) ?? [];
    // Most meals have none, and what a whole day comes to takes long to tell.
    if (limits.length === 0) return [];
    const asked = new Set(limits.map(({ demand }) => demand));
    return this.#outcomesOf(({ within, demand }) => within !== undefined && asked.has(demand.demand));
  }

  #outcomesOf(is: (asked: DayTask["task"]["asked"][number]) => boolean): readonly FitOutcome[] {
    const all = this.#answer?.outcomes ?? [];
    return this.#day.task.asked.flatMap((asked, i) => (is(asked) ? (all[i] ?? []) : []));
  }

  /** What each meal brings of the day's energy. */
  get shares(): readonly DayShare[] {
    const meals = [...this.#day.shares.shares.keys()];
    return (this.#day.task.shares ?? []).map(({ share, least, most, value, per }, i): DayShare => {
      const answer = this.#answer;
      const at = (of: typeof value) => answer && pointValue(gather(answer.problem.model, of), answer.point);
      const [own, whole] = [at(value), at(per)];
      const brings = own && whole && whole.n !== 0n ? over(own, whole) : undefined;
      return { meal: meals[i] ?? "", asked: share, least, most, brings };
    });
  }

  /** Demands that lines are silent on, or whose figures could break them: not proven. */
  get notProven(): readonly NotProven[] {
    return notProvenOf(this.#day.task);
  }

  /** Why not everything is met; empty where it is. */
  get text(): string {
    return this.textIn(britishEnglish);
  }

  /** @internal The same in a language. */
  textIn(language: Language): string {
    if (this.#solved.found) return "";
    const known = this.#texts.get(language);
    if (known !== undefined) return known;
    const { problem, task } = this.#solved;
    this.#standing ??= standingTogether(problem, task.pivots);
    const words = new DayWords(task.dishes, language);
    const all = this.#standing.slice(0, SHOWN).map((each) => words.standing(each));
    const more = this.#standing.length - all.length;
    const demands = all.join("; ");
    const text =
      more > 0
        ? say(language, "These cannot stand together in one day: {demands}; and {count} more.", {
            demands,
            count: String(more),
          })
        : say(language, "These cannot stand together in one day: {demands}.", { demands });
    this.#texts.set(language, text);
    return text;
  }

  /** @internal What the day misses of what was asked of it, or of what one of its meals had to meet. */
  missedIn(language: Language, meal?: string): readonly string[] {
    const limits = new Set((meal === undefined ? [] : (this.#day.limits.get(meal) ?? [])).map(demandOf));
    const words = new DayWords(this.#day.task.dishes, language);
    const all = this.#answer?.outcomes ?? [];
    return this.#day.task.asked.flatMap(({ demand, within }, i) => {
      const own =
        meal === undefined ? within === undefined : within !== undefined && limits.has(demand.demand);
      const outcome = all[i];
      return own && outcome && !outcome.met ? [words.missed(demand, outcome)] : [];
    });
  }
}

function demandOf({ demand }: ReadDemand): ReadDemand["demand"] {
  return demand;
}

/** How many of what cannot stand together a sentence names. */
const SHOWN = 8;
