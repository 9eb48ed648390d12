import type { Quantity } from "../scale/demand.ts";
import { unitOf } from "../scale/linear.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Bound, Marks } from "../sheet/tally.ts";
import type { Tabular } from "../show/tabular.ts";
import { type Affine, formValue, sizeAt } from "./affine.ts";
import { ColumnData } from "./columnData.ts";
import { boundCodes, type PortionColumn, type PortionColumns } from "./columns.ts";
import { type AffineCell, type AffinePiece, cellsOf, type Form, standsIn } from "./piece.ts";
import type { FactorWay, Solved } from "./way.ts";

/** Of a sum smaller than this part of its terms too many digits are lost: it is worked out exactly. */
const LOST = 1 / 32;

const [REACHED, BEYOND] = [0, 1];
const [NOWHERE, APART] = [-1, -2];

const UNKNOWN: number = /* @__PURE__ */ boundCodes.indexOf("unknown");

/** PortionColumns for rows of targets: each row read off the piece that it lies in, or worked out by itself. */
export function filled<Q extends Quantity>(
  s: Sheet,
  way: FactorWay,
  length: number,
  asked: readonly Q[],
): PortionColumns<Q> & Tabular {
  const rows = new Rows(way, length, asked);
  const none = new Float64Array(length).fill(Number.NaN);
  const columns = Object.fromEntries(asked.map((of, c) => [of, columnOf(rows, of, c, none)]));
  return Object.assign(new ColumnData(), {
    is: "steelyard/columns@1" as const,
    name: s.name,
    length,
    factor: rows.factor,
    status: rows.status,
    columns: columns as { readonly [K in Q]: PortionColumn },
    solved: rows.solved,
  });
}

/** Where each row lies. */
class Rows {
  readonly length: number;
  readonly at: Float64Array;
  readonly status: Uint8Array;
  readonly factor: Float64Array;
  readonly pieces: AffinePiece[] = [];
  /** Of each row its place in `pieces`; below 0 where it lies in none. */
  readonly pieceOf: Int16Array;
  readonly #way: FactorWay;
  readonly #asked: readonly Quantity[];
  readonly #apart = new Map<number, readonly AffineCell[]>();
  readonly hasUnreached: boolean;
  readonly #bounds = new Map<number, Uint8Array>();
  solved = 0;

  constructor(way: FactorWay, length: number, asked: readonly Quantity[]) {
    this.#way = way;
    this.#asked = asked;
    this.length = length;
    this.at = new Float64Array(length * way.count);
    this.status = new Uint8Array(length);
    this.pieceOf = new Int16Array(length);
    way.place(this.at, this.status);
    for (let i = 0; i < length; i += 1) {
      const [first] = this.pieces;
      // Where figures take no turn, all that is left lies in the one piece.
      if (first && first.margins.length === 0 && !way.isRefused(first)) {
        for (let k = i; k < length; k += 1) this.pieceOf[k] = this.status[k] === REACHED ? 0 : NOWHERE;
        break;
      }
      this.pieceOf[i] = this.#settle(i);
    }
    this.hasUnreached = this.status.some((code) => code !== REACHED);
    const [only] = this.pieces;
    this.factor = way.count === 1 ? this.at : new Float64Array(length);
    for (let i = 0; i < length; i += 1) {
      const piece = this.pieces[this.pieceOf[i] as number] ?? only;
      if (this.status[i] !== REACHED) this.factor[i] = Number.NaN;
      else if (way.count > 1 && piece && this.pieceOf[i] !== APART)
        this.factor[i] = formValue(piece.factor, this.at, i);
    }
    for (const [i, factor] of this.#factors) this.factor[i] = factor;
  }

  readonly #factors = new Map<number, number>();

  #settle(i: number): number {
    if (this.status[i] !== REACHED) return NOWHERE;
    const { at, pieces } = this;
    const way = this.#way;
    for (let k = 0; k < pieces.length; k += 1) {
      const piece = pieces[k] as AffinePiece;
      const stands = piece.margins.length === 0 ? 1 : standsIn(piece, at, i);
      if (stands > 0) return way.isRefused(piece) ? this.#refuse(i) : k;
      if (stands === 0) return this.#stand(i, this.#solve(i));
    }
    if (way.isBeyond(at, i)) return this.#refuse(i);
    const solved = this.#solve(i);
    const piece = solved?.piece();
    if (!piece) return this.#stand(i, solved);
    pieces.push(piece);
    return standsIn(piece, at, i) > 0 ? pieces.length - 1 : this.#stand(i, solved);
  }

  /** One array for all columns that are bounded alike throughout. */
  boundedBy(code: number): Uint8Array {
    const made = this.#bounds.get(code) ?? new Uint8Array(this.length).fill(code);
    if (this.hasUnreached && !this.#bounds.has(code))
      for (let i = 0; i < made.length; i += 1) if (this.status[i] !== REACHED) made[i] = UNKNOWN;
    this.#bounds.set(code, made);
    return made;
  }

  #refuse(i: number): number {
    this.status[i] = BEYOND;
    return NOWHERE;
  }

  #solve(i: number): Solved | undefined {
    this.solved += 1;
    return this.#way.solve(i);
  }

  /** A row that is worked out by itself. */
  #stand(i: number, solved: Solved | undefined): number {
    if (!solved) return this.#refuse(i);
    this.#apart.set(i, cellsOf(solved.sheet, this.#asked));
    this.#factors.set(i, solved.factor);
    return APART;
  }

  /** The figures of rows that are worked out by themselves. */
  get apart(): ReadonlyMap<number, readonly AffineCell[]> {
    return this.#apart;
  }

  /** The figures of a row that turns out to need it. */
  exactly(i: number, c: number): AffineCell | undefined {
    if (!this.#apart.has(i)) {
      const solved = this.#solve(i);
      if (solved) this.#apart.set(i, cellsOf(solved.sheet, this.#asked));
    }
    return this.#apart.get(i)?.[c];
  }
}

function columnOf(rows: Rows, of: Quantity, c: number, none: Float64Array): PortionColumn {
  const { length, pieces } = rows;
  const forms = pieces.map((piece) => piece.forms[c] as Form);
  const lost = new Set<number>();
  const value = read(
    rows,
    forms.map((form) => form.value),
    none,
    lost,
  );
  const end = (which: "least" | "most"): Float64Array =>
    forms.every((form) => form[which] === form.value)
      ? value
      : read(
          rows,
          forms.map((form) => form[which]),
          none,
          lost,
        );
  const ends = { value, least: end("least"), most: end("most") };
  const made = { ...ends, bound: boundsOf(rows, forms, ends, lost) };
  const marks = new MarksSeen(length);
  for (const [k, form] of forms.entries()) marks.ofPiece(k, form.marks);
  if (pieces.length > 1) for (let i = 0; i < length; i += 1) marks.set(i, rows.pieceOf[i] as number);
  const cells = new Map<number, AffineCell>();
  for (const [i, own] of rows.apart) cells.set(i, own[c] as AffineCell);
  for (const i of lost) {
    const cell = rows.exactly(i, c);
    if (cell) cells.set(i, cell);
  }
  const put = withOwn(made, cells, none);
  for (const [i, cell] of cells) {
    put.bound[i] = boundCodes.indexOf(cell.bound);
    marks.add(i, cell.marks);
  }
  return { component: of, unit: unitOf(of), ...put, ...marks.seen };
}

type Figures = Pick<PortionColumn, "value" | "least" | "most" | "bound">;

/** The same with what single rows say, in arrays of their own where they shared one and no longer can. */
function withOwn(made: Figures, cells: ReadonlyMap<number, AffineCell>, none: Float64Array): Figures {
  if (cells.size === 0) return made;
  const all = [...cells];
  const { value } = made;
  const ofValue = (cell: AffineCell): number => cell.value;
  const written = (array: Float64Array, of: (cell: AffineCell) => number): Float64Array => {
    const isShared = array === value && of !== ofValue;
    if (isShared && all.every(([, cell]) => Object.is(of(cell), cell.value))) return array;
    if (array === none && all.every(([, cell]) => Number.isNaN(of(cell)))) return array;
    const own = isShared || array === none ? array.slice() : array;
    for (const [i, cell] of all) own[i] = of(cell);
    return own;
  };
  const least = written(made.least, ({ least }) => least);
  const most = written(made.most, ({ most }) => most);
  return { value: written(value, ofValue), least, most, bound: made.bound.slice() };
}

/** One figure of every row, `NaN` where there is none. Rows of which too many digits are lost go into `lost`. */
function read(
  { at, length, pieces, pieceOf }: Rows,
  forms: readonly (Affine | undefined)[],
  none: Float64Array,
  lost: Set<number>,
): Float64Array {
  if (forms.every((form) => form === undefined)) return none;
  const [only] = forms;
  const made = new Float64Array(length);
  if (pieces.length === 1 && only?.length === 2) {
    const [constant = 0, per = 0] = only;
    for (let i = 0; i < length; i += 1) made[i] = constant + per * (at[i] as number);
    if (constant * per < 0)
      for (let i = 0; i < length; i += 1)
        if (Math.abs(made[i] as number) < LOST * Math.abs(constant)) lost.add(i);
    return made;
  }
  for (let i = 0; i < length; i += 1) {
    const form = forms[pieceOf[i] as number];
    if (!form) {
      made[i] = Number.NaN;
      continue;
    }
    const value = formValue(form, at, i);
    made[i] = value;
    if (Math.abs(value) < LOST * sizeAt(form, at, i)) lost.add(i);
  }
  return made;
}

/** How each value bounds the truth. */
function boundsOf(
  rows: Rows,
  forms: readonly Form[],
  { value, least, most }: Omit<Figures, "bound">,
  lost: Set<number>,
): Uint8Array {
  const codes = forms.map(({ bound }) => (bound === "narrow" ? -1 : boundCodes.indexOf(bound)));
  const [only = UNKNOWN] = codes;
  if (only >= 0 && codes.every((code) => code === only)) return rows.boundedBy(only);
  const { length, pieceOf, status } = rows;
  const bound = new Uint8Array(length);
  for (let i = 0; i < length; i += 1) {
    const code = codes[pieceOf[i] as number];
    if (status[i] !== REACHED) bound[i] = UNKNOWN;
    else if (code !== undefined && code >= 0) bound[i] = code;
    else if (code !== undefined) {
      const said = boundWithin(value[i] as number, least[i] as number, most[i] as number);
      if (said) bound[i] = boundCodes.indexOf(said);
      else lost.add(i);
    }
  }
  return bound;
}

/** As `boundOfEnds` has it, but for where doubles cannot tell. */
function boundWithin(value: number, least: number, most: number): Bound | undefined {
  const room = Math.abs(value) / 10;
  const furthest = Math.max(value - least, most - value);
  if (Math.abs(furthest - room) <= 1e-9 * Math.abs(value)) return undefined;
  return furthest < room ? "point" : "between";
}

/** The different marks that rows of a column have. */
class MarksSeen {
  readonly #all: Marks[] = [];
  readonly #places = new Map<string, number>();
  readonly #pieces: number[] = [];
  readonly #of: Uint8Array;

  constructor(length: number) {
    this.#of = new Uint8Array(length);
  }

  ofPiece(k: number, marks: Marks): void {
    this.#pieces[k] = this.#placeOf(marks);
  }

  /** Sets a row's to those of its piece. */
  set(i: number, piece: number): void {
    this.#of[i] = this.#pieces[piece] ?? 0;
  }

  add(i: number, marks: Marks): void {
    this.#of[i] = this.#placeOf(marks);
  }

  get seen(): Pick<PortionColumn, "marks" | "marksOf"> {
    return { marks: this.#all, marksOf: this.#all.length > 1 ? this.#of : undefined };
  }

  #placeOf(marks: Marks): number {
    const key = JSON.stringify(marks);
    const place = this.#places.get(key) ?? this.#all.length;
    if (place === this.#all.length) {
      this.#all.push(marks);
      this.#places.set(key, place);
    }
    return place;
  }
}
