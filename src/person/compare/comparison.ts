import { type ComponentId, component } from "../../food/components.ts";
import { Result } from "../../number/result.ts";
import type { NoUpper } from "../intakes/referenceIntakes.ts";
import type { Authority } from "../intakes/table.ts";
import type { PortionCaution } from "../portion/cautions.ts";
import type { EnergyBalance, PortionRatio } from "./balance.ts";
import type { HeldReference, HeldUpper } from "./held.ts";

/** A portion against one authority's figures of one component, or of several that it counts together. */
export interface ComparisonRow {
  readonly of: readonly ComponentId[];
  /** The day's figure; where an authority has several of one component, the first of `references`. */
  readonly reference: HeldReference | undefined;
  /** The lowest level that counts what food brings, else the first. */
  readonly upper: HeldUpper | undefined;
  readonly references: readonly HeldReference[];
  readonly uppers: readonly HeldUpper[];
}

/** Everything that a comparison holds, beside its tables. */
export interface ComparisonData {
  /** What was eaten, by name. */
  readonly name: string;
  readonly meals: number;
  readonly authority: Authority | `label ${string}`;
  readonly rows: readonly ComparisonRow[];
  readonly balance: readonly EnergyBalance[];
  readonly ratios: readonly PortionRatio[];
  readonly cautions: readonly PortionCaution[];
  /** Components whose figure is set per megajoule or as a share of energy, while no energy is known. */
  readonly needEnergy: readonly ComponentId[];
  /** Of what was looked at, what no upper level limits for this person. */
  readonly withoutUpper: readonly NoUpper[];
  readonly note: string;
}

/**
 * How a portion stands against a day: shares of reference intakes, upper levels, shares of energy,
 * cautions. A portion is part of a day, so nothing here passes or fails.
 */
export class Comparison extends Result implements ComparisonData {
  readonly is = "steelyard/comparison@1";
  readonly name: string;
  readonly meals: number;
  readonly authority: ComparisonData["authority"];
  readonly rows: readonly ComparisonRow[];
  readonly balance: readonly EnergyBalance[];
  readonly ratios: readonly PortionRatio[];
  readonly cautions: readonly PortionCaution[];
  readonly needEnergy: readonly ComponentId[];
  readonly withoutUpper: readonly NoUpper[];
  readonly note: string;

  /** @internal Use {@link compare}. */
  constructor(data: ComparisonData) {
    super();
    this.name = data.name;
    this.meals = data.meals;
    this.authority = data.authority;
    this.rows = data.rows;
    this.balance = data.balance;
    this.ratios = data.ratios;
    this.cautions = data.cautions;
    this.needEnergy = data.needEnergy;
    this.withoutUpper = data.withoutUpper;
    this.note = data.note;
  }

  override toString(): string {
    const past =
      this.past.length === 0
        ? "no upper level proven past"
        : `past the upper level: ${this.past.map(({ of }) => of.join(" + ")).join(", ")}`;
    return `${this.name}, against a day (${this.authority}): ${past}`;
  }

  /** The row whose figures count a component; nothing where there is no figure. Throws `component-unknown`. */
  get(id: ComponentId): ComparisonRow | undefined {
    const { id: known } = component(id);
    return this.rows.find(({ of }) => of.includes(known));
  }

  /** Rows that are past an upper level, proven. */
  get past(): readonly ComparisonRow[] {
    return this.rows.filter(({ uppers }) => uppers.some(({ verdict }) => verdict === "past"));
  }

  /** Rows of which what is told can be past an upper level, and need not be. */
  get mayBePast(): readonly ComparisonRow[] {
    return this.rows.filter(({ uppers }) => uppers.some(({ verdict }) => verdict === "may-be-past"));
  }
}
