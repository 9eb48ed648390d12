import { type Exact, plus } from "../number/exact.ts";

/** What is taken of a batch of a nested recipe, in grams as eaten. */
export interface BatchDraw {
  /** The dish that takes it; undefined where it goes into another nested recipe. */
  readonly meal: string | undefined;
  readonly dish: string | undefined;
  /** The nested recipe that takes it, by its id; undefined where a dish does. */
  readonly recipe: string | undefined;
  /** Key of the line that names the recipe. */
  readonly line: string;
  /** Whether it goes into a pot, into one person's own cooking, or onto a plate. */
  readonly into: "pot" | "apart" | "serving";
  /** Who gets it, where it is one person's. */
  readonly person: string | undefined;
  /** The day on which it is taken; undefined where the schedule names none. */
  readonly day: string | undefined;
  readonly grams: Exact;
}

/** What is drawn on. */
interface Batch {
  /** Grams that nothing draws on. */
  readonly left: Exact;
  takes(draw: Draw): void;
}

/** Something that takes of a batch: what was planned until it is settled. */
export class Draw {
  readonly #batch: Batch;
  readonly exact: Exact;
  readonly at: Omit<BatchDraw, "grams">;
  #grams: Exact | undefined;

  constructor(batch: Batch, exact: Exact, at: Omit<BatchDraw, "grams">) {
    this.#batch = batch;
    this.exact = exact;
    this.at = at;
    batch.takes(this);
  }

  get grams(): Exact {
    return this.#grams ?? this.exact;
  }

  /** The most that may be taken: what the others leave, of which those still to come get what was planned. */
  get cap(): Exact {
    return plus(this.#batch.left, this.grams);
  }

  settle(grams: Exact): void {
    this.#grams = grams;
  }
}
