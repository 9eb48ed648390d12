import { type ErrorCode, SteelyardError } from "../number/error.ts";
import { exact, type Value } from "../number/exact.ts";
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
export interface CellEntry {
  readonly ref: CellRef;
  readonly value: CellValue;
  readonly reads: readonly { readonly ref: CellRef; readonly value: CellValue }[];
}

/** What a sheet carries over from the one that it was made from. */
export interface CarriedOver {
  /** Entries of an earlier version, each of which serves again where what it read comes out equal. */
  readonly earlier: ReadonlyMap<string, CellEntry>;
  /** Entries of the same values, which nothing that changed reaches: they stand as they are. */
  readonly settled: Map<string, CellEntry>;
  /**
   * Every name that is written or read in those, and more: what is not among them cannot change any. All
   * versions share it.
   */
  readonly names: Set<string>;
}

export function nothingCarried(): CarriedOver {
  return { earlier: new Map(), settled: new Map(), names: new Set() };
}

/** Thrown inside a formula that reads a failed cell, so that the failure passes through it. */
class Passed extends Error {}

/** Thrown where cells read each other deeper than a call stack goes: the cell is settled first, by itself. */
class Deferred extends Error {
  readonly ref: CellRef;

  constructor(ref: CellRef) {
    super();
    this.ref = ref;
  }
}

/** How many cells deep formulas read each other before the deepest is settled by itself. */
const DEEPEST = 200;

/** What only an evaluation in hand needs. */
class Running {
  readonly stack: Frame[] = [];
  /** Frames that wait for a deferred cell. */
  readonly waiting: Frame[] = [];
  /** Keys of all frames, waiting or not. */
  readonly open: Set<string> = new Set();
  readonly cycles: Map<string, Failure> = new Map();
  deferred: Deferred | undefined;
  /** Frames that a deferred cell has just unwound, the outermost first. */
  unwound: Frame[] = [];
}

interface Frame {
  readonly key: string;
  readonly ref: CellRef;
  readonly reads: CellEntry["reads"][number][];
}

/**
 * Evaluates cells of one's own, each once, and records what each reads. An entry of an earlier
 * version serves again where all that it read comes out equal, so an edit recomputes only what it
 * reaches. A cycle gives every cell on it the same failure.
 */
export class Evaluator {
  readonly entries: Map<string, CellEntry>;
  readonly #earlier: ReadonlyMap<string, CellEntry>;
  readonly #names: Set<string>;
  #running: Running | undefined;
  /** Set once another sheet goes on writing in the entries: a second one then needs its own. */
  #isHandedOn = false;

  constructor({ earlier, settled, names }: CarriedOver) {
    this.#earlier = earlier;
    this.entries = settled;
    this.#names = names;
  }

  /**
   * What still serves where cells are defined anew, and the entries that read them, near or far. What no
   * entry has heard of reaches none: all are then handed on as they are. `mine` tells entries of this sheet
   * from those that a later one has written beside them.
   */
  redefining(
    name: string,
    defined: (ref: CellRef) => boolean,
    mine: (ref: CellRef) => boolean,
  ): { readonly carried: CarriedOver; readonly reached: readonly CellRef[] } {
    if (!this.#isHandedOn && !this.#names.has(name)) {
      this.#isHandedOn = true;
      return { carried: { earlier: this.#earlier, settled: this.entries, names: this.#names }, reached: [] };
    }
    return this.#sorted(defined, mine);
  }

  #sorted(
    defined: (ref: CellRef) => boolean,
    mine: (ref: CellRef) => boolean,
  ): { readonly carried: CarriedOver; readonly reached: readonly CellRef[] } {
    const own = [...this.entries].filter(([, { ref }]) => mine(ref));
    const readers = new Map<string, string[]>();
    const reached = new Set<string>();
    for (const [key, { ref, reads }] of own) {
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
    const earlier = new Map<string, CellEntry>();
    const settled = new Map<string, CellEntry>();
    for (const [key, entry] of this.#earlier)
      if (!this.entries.has(key) && !defined(entry.ref)) earlier.set(key, entry);
    for (const [key, entry] of own) {
      if (defined(entry.ref)) continue;
      if (!reached.has(key)) settled.set(key, entry);
      else {
        again.push(entry.ref);
        earlier.set(key, entry);
      }
    }
    return { carried: { earlier, settled, names: this.#names }, reached: again };
  }

  /** What a version of other values may use again. */
  get reusable(): CarriedOver {
    const earlier = this.entries.size === 0 ? this.#earlier : new Map([...this.#earlier, ...this.entries]);
    return { earlier, settled: new Map(), names: this.#names };
  }

  /** Notes that the formula in hand read a cell, and gives its value or passes its failure on. */
  read(ref: CellRef, value: CellValue): Tally {
    this.#run.stack.at(-1)?.reads.push({ ref, value });
    if (isFailure(value)) throw new Passed();
    return value;
  }

  /** The value of a cell of one's own. `look` tells what any cell holds now. */
  value(ref: CellRef, formula: () => FormulaResult, look: (ref: CellRef) => CellValue): CellValue {
    const key = cellKey(ref);
    const known = this.entries.get(key);
    if (known) return known.value;
    if (this.#run.open.has(key)) return this.#cycle(key);
    if (this.#run.stack.length >= DEEPEST) {
      this.#run.deferred = new Deferred(ref);
      throw this.#run.deferred;
    }
    if (this.#run.stack.length > 0) return this.#settle(key, ref, formula, look);
    try {
      return this.#settleAlone(key, ref, formula, look);
    } finally {
      if (this.#run.waiting.length === 0) this.#running = undefined;
    }
  }

  /** Settles a cell that no other waits for: again and again, while a deeper one has to come first. */
  #settleAlone(
    key: string,
    ref: CellRef,
    formula: () => FormulaResult,
    look: (ref: CellRef) => CellValue,
  ): CellValue {
    for (;;) {
      try {
        return this.#settle(key, ref, formula, look);
      } catch (error) {
        if (!(error instanceof Deferred)) throw error;
        this.#settleFirst(error, look);
      }
    }
  }

  /** Settles a deferred cell on a stack of its own; those above it wait, and are then begun anew. */
  #settleFirst({ ref }: Deferred, look: (ref: CellRef) => CellValue): void {
    const waiting = this.#run.unwound;
    this.#run.unwound = [];
    this.#run.waiting.push(...waiting);
    for (const { key } of waiting) this.#run.open.add(key);
    look(ref);
    for (const { key } of waiting) this.#run.open.delete(key);
    this.#run.waiting.length -= waiting.length;
  }

  get #run(): Running {
    this.#running ??= new Running();
    return this.#running;
  }

  #settle(
    key: string,
    ref: CellRef,
    formula: () => FormulaResult,
    look: (ref: CellRef) => CellValue,
  ): CellValue {
    const entry = this.#again(key, look) ?? this.#evaluate(key, ref, formula);
    this.entries.set(key, entry);
    this.#note(entry.ref);
    for (const read of entry.reads) this.#note(read.ref);
    return entry.value;
  }

  #note({ column, row }: CellRef): void {
    this.#names.add(column);
    if (typeof row === "object" && "row" in row) this.#names.add(row.row);
  }

  /** Runs something as the frame of a cell; a deferral passes through, whatever a formula caught. */
  #within<T>(frame: Frame, run: () => T): T {
    this.#run.stack.push(frame);
    this.#run.open.add(frame.key);
    try {
      const made = run();
      if (this.#run.deferred) throw this.#run.deferred;
      return made;
    } catch (error) {
      if (error instanceof Deferred) this.#run.unwound.unshift(frame);
      throw error;
    } finally {
      this.#run.stack.pop();
      this.#run.open.delete(frame.key);
      if (this.#run.stack.length === 0) this.#run.deferred = undefined;
    }
  }

  /** The entry of an earlier version, where all that it read is as it was. */
  #again(key: string, look: (ref: CellRef) => CellValue): CellEntry | undefined {
    const earlier = this.#earlier.get(key);
    if (!earlier) return undefined;
    const frame = { key, ref: earlier.ref, reads: [] };
    const isSame = this.#within(frame, () =>
      earlier.reads.every((read) => sameValue(look(read.ref), read.value)),
    );
    return isSame && !this.#run.cycles.has(key) ? earlier : undefined;
  }

  #evaluate(key: string, ref: CellRef, formula: () => FormulaResult): CellEntry {
    const frame: Frame = { key, ref, reads: [] };
    const value = this.#within(frame, (): CellValue => {
      try {
        return asTally(formula());
      } catch (error) {
        if (error instanceof Deferred) throw error;
        return error instanceof Passed
          ? { failed: true, code: "formula-threw", message: "", cell: "" }
          : failureOf(error, ref);
      }
    });
    // A formula cannot hide a failed cell by catching what reading it threw.
    const failed = frame.reads.find((read) => isFailure(read.value))?.value;
    return { ref, value: this.#run.cycles.get(key) ?? failed ?? value, reads: frame.reads };
  }

  #cycle(key: string): Failure {
    const all = [...this.#run.waiting, ...this.#run.stack];
    const round = all.slice(all.findIndex((frame) => frame.key === key));
    const labels = round.map((frame) => cellLabel(frame.ref));
    // One name for the cycle, wherever it was entered.
    const first = labels.indexOf([...labels].sort()[0] ?? "");
    const way = [...labels.slice(first), ...labels.slice(0, first)];
    const failure: Failure = {
      failed: true,
      code: "column-cycle",
      message: wayText(way),
      cell: way[0] ?? "",
    };
    for (const frame of round) if (!this.#run.cycles.has(frame.key)) this.#run.cycles.set(frame.key, failure);
    return failure;
  }
}

/** The way round a cycle; of a long one its beginning and its end. */
function wayText(way: readonly string[]): string {
  const round = [...way, way[0] ?? ""];
  if (round.length <= LONGEST_WAY) return round.join(" → ");
  const left = round.length - LONGEST_WAY;
  return [...round.slice(0, LONGEST_WAY - 2), `${left} more`, ...round.slice(-2)].join(" → ");
}

const LONGEST_WAY = 20;

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
