import type { Allergen } from "../../food/allergens.ts";
import type { ComponentId } from "../../food/components.ts";
import { Result } from "../../number/result.ts";
import type { Quantity } from "../demand.ts";
import type { FoodsLeftOut, Opening, OutsideServing } from "./leftOut.ts";
import type { Replaced } from "./moves.ts";
import type { Substitute } from "./substitute.ts";

/** What could stand in, the closest first, and what was left out. */
export class Substitutes extends Result {
  readonly is = "steelyard/substitutes@1";
  /** What each brings just as much of as the line did. */
  readonly match: Quantity;
  readonly found: readonly Substitute[];
  /** Foods left out because they hold what is to be avoided. */
  readonly avoided: readonly { readonly food: string; readonly holds: readonly Allergen[] }[];
  /** Foods left out because nothing is known of their allergens: unknown is not free from. */
  readonly unknown: readonly string[];
  /** Foods left out because they bring none of what is matched, or do not say. */
  readonly without: readonly string[];
  /** Foods left out because a cook would not serve what it would take of them. */
  readonly outside: readonly OutsideServing[];
  /** Why nothing was found; nothing where something was. */
  readonly why: string | undefined;
  /** Where nothing was found, what would open it. */
  readonly opens: readonly string[];
  /** What was to stay close but the line says nothing of: there is no figure to stay close to. */
  readonly untold: readonly ComponentId[];
  readonly #of: Replaced;

  /** @internal Use {@link substitutes}. */
  constructor(
    of: Replaced,
    found: readonly Substitute[],
    left: FoodsLeftOut & Pick<Substitutes, "untold" | "match"> & { readonly opening: Opening | undefined },
  ) {
    super();
    this.#of = of;
    this.found = found;
    this.avoided = left.avoided;
    this.unknown = left.unknown;
    this.without = left.without;
    this.outside = left.outside;
    this.untold = left.untold;
    this.match = left.match;
    this.why = left.opening?.why;
    this.opens = left.opening?.opens ?? [];
  }

  override toString(): string {
    const foods = this.found.map(({ name }) => name).join(", ");
    return `instead of ${this.#of.name}: ${this.why ?? foods}`;
  }

  /** @internal The line that they stand in for. */
  of(): Replaced {
    return this.#of;
  }
}
