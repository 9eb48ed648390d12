import { type ErrorCode, SteelyardError } from "../number/error.ts";
import { exact, type Value } from "../number/fraction.ts";
import { constantTally, Tally } from "./tally.ts";

/** Why a cell of one's own has no value: what was thrown, and the cell it was thrown in. */
export interface Failure {
  readonly failed: true;
  readonly code: ErrorCode | "formula-threw";
  readonly message: string;
  /** Where it began: `cost of oats`. */
  readonly cell: string;
}

/** What a cell holds. */
export type CellValue = Tally | Failure;

/** A row of the grid: a line, one of the three sums, or a row of one's own. */
export type RowRef = { readonly line: string } | { readonly row: string } | "total" | "portion" | "per100g";

/** A cell of the grid; `column` is a component, `grams`, a column of one's own, or a constant with row `total`. */
export interface CellRef {
  readonly column: string;
  readonly row: RowRef;
}

export function isFailure(value: CellValue): value is Failure {
  return "failed" in value;
}

/** What a formula may give back. */
export type FormulaResult = Tally | Value;

/** Names a cell for people and maps: `cost of oats`, `energy of the portion`. */
export function cellLabel({ column, row }: CellRef): string {
  if (row === "total") return `${column} of the batch`;
  if (row === "portion") return `${column} of the portion`;
  if (row === "per100g") return `${column} of 100 g`;
  return "line" in row ? `${column} of ${row.line}` : `${column} in ${row.row}`;
}

/** Distinct for every cell, whatever names hold. */
export function cellKey({ column, row }: CellRef): string {
  const place = typeof row === "string" ? row : "line" in row ? `line ${row.line}` : `row ${row.row}`;
  return `${column.length} ${column} ${place}`;
}

/** A cell's value with what it read to get there. */
export interface Entry {
  readonly ref: CellRef;
  readonly value: CellValue;
  readonly reads: readonly { readonly ref: CellRef; readonly value: CellValue }[];
}

/** What a sheet carries over from the one that it was made from. */
export interface CarriedOver {
  /** Entries of an earlier version, each of which serves again where what it read comes out equal. */
  readonly earlier: ReadonlyMap<string, Entry>;
  /** Entries of the same values, which nothing that changed reaches: they stand as they are. */
  readonly settled: ReadonlyMap<string, Entry>;
}

export const NOTHING_CARRIED: CarriedOver = { earlier: new Map(), settled: new Map() };

/** Thrown inside a formula that reads a failed cell, so that the failure passes through it. */
class Passed extends Error {}

/**
 * Evaluates cells of one's own, each once, and records what each reads. An entry of an earlier
 * version serves again where all that it read comes out equal, so an edit recomputes only what it
 * reaches. A cycle gives every cell on it the same failure.
 */
export class Evaluator {
  readonly entries: Map<string, Entry>;
  readonly #stack: {
    readonly key: string;
    readonly ref: CellRef;
    readonly reads: Entry["reads"][number][];
  }[] = [];
  readonly #cycles = new Map<string, Failure>();
  readonly #earlier: ReadonlyMap<string, Entry>;

  constructor({ earlier, settled }: CarriedOver) {
    this.#earlier = earlier;
    this.entries = new Map(settled);
  }

  /** What still serves where cells are defined anew, and the entries that read them, near or far. */
  redefining(defined: (ref: CellRef) => boolean): {
    readonly carried: CarriedOver;
    readonly reached: readonly CellRef[];
  } {
    const readers = new Map<string, string[]>();
    const reached = new Set<string>();
    const settled = new Map<string, Entry>();
    for (const [key, { ref, reads }] of this.entries) {
      if (reads.some((read) => defined(read.ref))) reached.add(key);
      if (defined(ref)) continue;
      for (const read of reads) {
        const of = cellKey(read.ref);
        const known = readers.get(of);
        if (known) known.push(key);
        else readers.set(of, [key]);
      }
    }
    for (const key of reached) for (const reader of readers.get(key) ?? []) reached.add(reader);
    const again: CellRef[] = [];
    const earlier = new Map<string, Entry>();
    for (const [key, entry] of this.#earlier)
      if (!this.entries.has(key) && !defined(entry.ref)) earlier.set(key, entry);
    for (const [key, entry] of this.entries) {
      if (defined(entry.ref)) continue;
      if (!reached.has(key)) settled.set(key, entry);
      else {
        again.push(entry.ref);
        earlier.set(key, entry);
      }
    }
    return { carried: { earlier, settled }, reached: again };
  }

  /** Every entry that a later version may use again. */
  get reusable(): ReadonlyMap<string, Entry> {
    return this.entries.size === 0 ? this.#earlier : new Map([...this.#earlier, ...this.entries]);
  }

  /** Notes that the formula in hand read a cell, and gives its value or passes its failure on. */
  read(ref: CellRef, value: CellValue): Tally {
    this.#stack.at(-1)?.reads.push({ ref, value });
    if (isFailure(value)) throw new Passed();
    return value;
  }

  /** The value of a cell of one's own. `look` tells what any cell holds now. */
  value(ref: CellRef, formula: () => FormulaResult, look: (ref: CellRef) => CellValue): CellValue {
    const key = cellKey(ref);
    const known = this.entries.get(key);
    if (known) return known.value;
    const at = this.#stack.findIndex((frame) => frame.key === key);
    if (at >= 0) return this.#cycle(at);
    const entry = this.#again(key, look) ?? this.#evaluate(key, ref, formula);
    this.entries.set(key, entry);
    return entry.value;
  }

  /** The entry of an earlier version, where all that it read is as it was. */
  #again(key: string, look: (ref: CellRef) => CellValue): Entry | undefined {
    const earlier = this.#earlier.get(key);
    if (!earlier) return undefined;
    this.#stack.push({ key, ref: earlier.ref, reads: [] });
    const same = earlier.reads.every((read) => sameValue(look(read.ref), read.value));
    this.#stack.pop();
    return same && !this.#cycles.has(key) ? earlier : undefined;
  }

  #evaluate(key: string, ref: CellRef, formula: () => FormulaResult): Entry {
    const reads: Entry["reads"][number][] = [];
    this.#stack.push({ key, ref, reads });
    let value: CellValue;
    try {
      value = asTally(formula());
    } catch (error) {
      value =
        error instanceof Passed
          ? { failed: true, code: "formula-threw", message: "", cell: "" }
          : failureOf(error, ref);
    }
    this.#stack.pop();
    // A formula cannot hide a failed cell by catching what reading it threw.
    const failed = reads.find((read) => isFailure(read.value))?.value;
    return { ref, value: this.#cycles.get(key) ?? failed ?? value, reads };
  }

  #cycle(at: number): Failure {
    const round = this.#stack.slice(at);
    const labels = round.map((frame) => cellLabel(frame.ref));
    // One name for the cycle, wherever it was entered.
    const first = labels.indexOf([...labels].sort()[0] ?? "");
    const way = [...labels.slice(first), ...labels.slice(0, first)];
    const failure: Failure = {
      failed: true,
      code: "column-cycle",
      message: [...way, way[0]].join(" → "),
      cell: way[0] ?? "",
    };
    for (const frame of round) if (!this.#cycles.has(frame.key)) this.#cycles.set(frame.key, failure);
    return failure;
  }
}

function asTally(result: FormulaResult): Tally {
  return result instanceof Tally ? result : constantTally(exact(result), "");
}

function failureOf(error: unknown, ref: CellRef): Failure {
  const cell = cellLabel(ref);
  if (error instanceof SteelyardError)
    return { failed: true, code: error.code, message: error.message, cell };
  return {
    failed: true,
    code: "formula-threw",
    message: error instanceof Error ? error.message : String(error),
    cell,
  };
}

/** Whether two cells say the same: value, unit, bound, marks and coverage. */
export function sameValue(a: CellValue, b: CellValue): boolean {
  if (a === b) return true;
  if (isFailure(a) || isFailure(b))
    return isFailure(a) && isFailure(b) && a.code === b.code && a.message === b.message && a.cell === b.cell;
  return a.same(b);
}
