import type { ComponentId } from "../food/components.ts";
import { componentIds } from "../food/components.ts";
import type { Figure } from "../food/food.ts";
import { type PackedMark, packFigure } from "../food/packed.ts";

/** What of a table found no place among the components, by name, and how many figures of it there were. */
export interface LeftOut {
  /** As the table calls it. */
  readonly name: string;
  /** Its number or tagname there. */
  readonly code: string;
  readonly unit: string;
  readonly count: number;
  /**
   * `no-component`: the library has none for it. `unit`: its unit does not turn into the component's.
   * `told-elsewhere`: the table gives the same in another unit, or by a part of it. `added`: it is the part
   * that was added, and is told by the food's `fortifiedWith`. `second`: another figure stands there.
   */
  readonly why: WhyLeftOut;
}

export type WhyLeftOut = "no-component" | "unit" | "told-elsewhere" | "added" | "second";

/** Counts what is left out, by code and reason. */
export class LeftOuts {
  readonly #found = new Map<
    string,
    { name: string; code: string; unit: string; count: number; why: WhyLeftOut }
  >();

  add(what: Omit<LeftOut, "count">): void {
    const key = `${what.code}\n${what.why}`;
    const known = this.#found.get(key);
    if (known) known.count += 1;
    else this.#found.set(key, { ...what, count: 1 });
  }

  list(): readonly LeftOut[] {
    return [...this.#found.values()];
  }
}

/** Figures of foods as they come in, kept packed: as objects they would take six times the room. */
export class Rows {
  readonly #marks = new Map<string, number>();
  readonly #rows = new Map<string, string[]>();
  readonly #places = new Map(componentIds.map((id, i) => [id, i]));

  /** Puts a figure of a food in its place; false where one stands there already. */
  set(food: string, id: ComponentId, figure: Figure): boolean {
    return this.put(
      food,
      id,
      packFigure(figure, (mark) => this.placeOf(mark)),
    );
  }

  /** Puts a figure as a packed row has it in its place; false where one stands there already. */
  put(food: string, id: ComponentId, cell: string): boolean {
    let row = this.#rows.get(food);
    if (!row) {
      row = new Array<string>(componentIds.length).fill("-");
      this.#rows.set(food, row);
    }
    const place = this.#placeOf(id);
    if ((row[place] ?? "-") !== "-") return false;
    row[place] = cell;
    return true;
  }

  has(food: string, id: ComponentId): boolean {
    return (this.#rows.get(food)?.[this.#placeOf(id)] ?? "-") !== "-";
  }

  /** What rows speak of, in order. */
  get components(): readonly ComponentId[] {
    return [...this.#places.keys()];
  }

  /** Components that the registry lacks stand behind its own. */
  #placeOf(id: ComponentId): number {
    let place = this.#places.get(id);
    if (place === undefined) {
      place = this.#places.size;
      this.#places.set(id, place);
    }
    return place;
  }

  /** The value of a figure as it is kept. */
  value(food: string, id: ComponentId): string | undefined {
    return this.has(food, id) ? this.#rows.get(food)?.[this.#placeOf(id)]?.split(":")[0] : undefined;
  }

  row(food: string): string {
    const row = this.#rows.get(food) ?? [];
    return Array.from({ length: this.#places.size }, (_, i) => row[i] ?? "-").join(" ");
  }

  get marks(): readonly PackedMark[] {
    return [...this.#marks.keys()].map((mark) => JSON.parse(mark));
  }

  /** The place of a mark among those that rows name. */
  placeOf(mark: object): number {
    const written = JSON.stringify(mark);
    const found = this.#marks.get(written) ?? this.#marks.size;
    this.#marks.set(written, found);
    return found;
  }
}
