import { britishEnglish, type Language } from "../document/language.ts";
import { readLanguage } from "../document/readLanguage.ts";
import { type Exact, minus, plus, ZERO } from "../number/exact.ts";
import { ToldResult } from "../number/told.ts";
import type { RatioDrift } from "../plan/measure/drift.ts";
import type { KitchenNote } from "../plan/share/groups.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { BatchDraw, Draw } from "./draw.ts";
import type { MeasuredBatch } from "./measuredBatch.ts";
import { type CookingSteps, stepsOfBatch } from "./steps.ts";
import type { CookingRun, VesselUse } from "./vessel.ts";

/** A nested recipe, made once for all that draws on it: its draws and what is left are all of it, literally. */
export interface CookedBatch {
  /** The id that lines name it by. */
  readonly recipe: string;
  readonly name: string;
  /** The day on which it is made; undefined where the schedule names none. */
  readonly day: string | undefined;
  /** All that is made of it. */
  readonly sheet: Sheet;
  /** What is asked of it, before a kitchen measures it. */
  readonly exact: Sheet;
  /** The line that measuring moves most against the rest; undefined where it moves none. */
  readonly drift: RatioDrift | undefined;
  /** Keys of lines in amounts that the kitchen can measure. */
  readonly measured: readonly string[];
  readonly kitchenNotes: readonly KitchenNote[];
  readonly vessel: VesselUse | undefined;
  readonly runs: readonly CookingRun[];
  readonly draws: readonly BatchDraw[];
  /** Grams as eaten that nothing draws on. */
  readonly left: Exact;
  /** How to make one run; in British English unless told. */
  steps(language?: Language): CookingSteps;
}

/** A batch whose draws are settled one after another. */
export class MadeBatch extends ToldResult implements CookedBatch {
  readonly recipe: string;
  readonly day: string | undefined;
  readonly #place: number;
  readonly #lastDay: number;
  readonly #draws: Draw[] = [];
  #made: MeasuredBatch;

  constructor(at: {
    readonly recipe: string;
    readonly day: string | undefined;
    readonly place: number;
    readonly lastDay: number;
    readonly made: MeasuredBatch;
  }) {
    super();
    this.recipe = at.recipe;
    this.day = at.day;
    this.#place = at.place;
    this.#lastDay = at.lastDay;
    this.#made = at.made;
  }

  /** @internal Where the day of making stands, and the last on which something is taken. */
  place(): { readonly made: number; readonly last: number } {
    return { made: this.#place, last: this.#lastDay };
  }

  /** @internal */
  takes(draw: Draw): void {
    this.#draws.push(draw);
  }

  /** @internal In amounts that can be measured. */
  becomes(made: MeasuredBatch): void {
    this.#made = made;
  }

  get name(): string {
    return this.sheet.name;
  }

  get sheet(): Sheet {
    return this.#made.sheet;
  }

  get exact(): Sheet {
    return this.#made.exact;
  }

  get drift(): RatioDrift | undefined {
    return this.#made.drift;
  }

  get measured(): readonly string[] {
    return this.#made.measured;
  }

  get kitchenNotes(): readonly KitchenNote[] {
    return this.#made.notes;
  }

  get vessel(): VesselUse | undefined {
    return this.#made.vessel;
  }

  get runs(): readonly CookingRun[] {
    return this.#made.runs;
  }

  get draws(): readonly BatchDraw[] {
    return this.#draws.map(({ at, grams }) => ({ ...at, grams }));
  }

  get left(): Exact {
    const taken = this.#draws.reduce((total, { grams }) => plus(total, grams), ZERO);
    return minus(this.sheet.masses.cooked, taken);
  }

  steps(language: Language = britishEnglish): CookingSteps {
    return stepsOfBatch(this, readLanguage(language));
  }
}
