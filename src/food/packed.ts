import { word } from "../document/leaves.ts";
import { isRecord, trust } from "../document/safe.ts";
import { andThen, fields, leaf, list, once, optional, type Refuse, type Schema } from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { exact, type Value } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import { compareText } from "../number/text.ts";
import { componentId } from "./componentSchema.ts";
import { type ComponentId, componentIds, isOwnComponent } from "./components.ts";
import type { Figure, FoodInput } from "./food.ts";
import { type RetentionTable, retentionTableSchema } from "./retentionTable.ts";

/**
 * Foods in a third of the room: what their figures speak of is named once, and so is what figures say of
 * themselves beside their numbers (`presumed`, `calculated`, …).
 */
export interface PackedFoods extends Packing {
  readonly format: typeof PACKED_FORMAT;
  readonly foods: readonly PackedFood[];
  readonly retention?: RetentionTable;
}

/** What rows of figures are read by. */
export interface Packing {
  /** What each figure of a food speaks of, in order. */
  readonly components: readonly ComponentId[];
  readonly marks: readonly PackedMark[];
}

/** What a figure says beside its numbers, or in their place. */
export type PackedMark = { readonly [field: string]: unknown };

/**
 * A food whose figures stand between spaces: `325`, `-` where there is none, `trace`, `0:2` where the
 * third of the marks goes with it, `:2` where that is the figure. Further colons part what else is told in
 * numbers, in the order of `NUMBERS`: `4.25::0.17:9` has no mark, a standard error and a count.
 */
export interface PackedFood extends Omit<FoodInput, "per100g"> {
  readonly per100g: string;
}

export const PACKED_FORMAT = "steelyard-foods/3" as const;

/** Formats that are read; the second has no numbers beside the value but in its marks. */
const PACKED_FORMATS = [PACKED_FORMAT, "steelyard-foods/2"] as const;

/** As many packed foods are read at once; of more each when it is asked for, and they are packed as they were. */
export const AT_ONCE = 1000;

const NUMBERS = ["error", "count", "least", "most", "low", "high"] as const;

/** The row that a food's figures are still to be read from. */
const rows: WeakMap<FoodInput, { readonly row: string; readonly packing: Packing }> =
  /* @__PURE__ */ new WeakMap();

/** A food whose figures are read from its row when they are first asked for, by `check` where that is given. */
export function unpacked(
  { per100g: row, ...about }: PackedFood,
  packing: Packing,
  { check = (figures) => figures, refuse, markAt }: HowToUnpack = {},
): FoodInput {
  let figures: FoodInput["per100g"] | undefined;
  const food: FoodInput = {
    ...about,
    get per100g(): FoodInput["per100g"] {
      figures ??= freezeAll(check(unpackFigures(row, packing, refuse, markAt)));
      return figures;
    },
  };
  rows.set(food, { row, packing });
  trust(food);
  return food;
}

interface HowToUnpack {
  /** Reads a mark when a figure with it is first asked for. */
  readonly markAt?: (place: number) => PackedMark | undefined;
  readonly check?: (figures: FoodInput["per100g"]) => FoodInput["per100g"];
  readonly refuse?: (message: string, hint: string) => void;
}

/** Packs foods, as plain data. */
export function packFoods(foods: readonly FoodInput[], retention?: RetentionTable): PackedFoods {
  const { packing, packed } = (foods.length > AT_ONCE && packedAlike(foods)) || packedAnew(foods);
  return { format: PACKED_FORMAT, ...packing, foods: packed, ...(retention && { retention }) };
}

/** Foods that came from one packed table are packed as they were. */
function packedAlike(foods: readonly FoodInput[]): Packed | undefined {
  const first = foods[0] && rows.get(foods[0]);
  if (!first) return undefined;
  const { packing } = first;
  const packed: PackedFood[] = [];
  for (const food of foods) {
    const of = rows.get(food);
    if (of?.packing !== packing) return undefined;
    packed.push({ ...plain(food), per100g: of.row });
  }
  return { packing, packed };
}

function packedAnew(foods: readonly FoodInput[]): Packed {
  const own = [...new Set(foods.flatMap(({ per100g }) => Object.keys(per100g).filter(isOwnComponent)))];
  const all = [...componentIds, ...own.sort(compareText)];
  const components = all.filter((id) => foods.some(({ per100g }) => per100g[id] !== undefined));
  const marks = new Map<string, number>();
  const placeOf = (mark: object): number => {
    const written = JSON.stringify(mark);
    const found = marks.get(written) ?? marks.size;
    marks.set(written, found);
    return found;
  };
  const packed = foods.map((food): PackedFood => {
    const row = components.map((id) => packFigure(food.per100g[id], placeOf)).join(" ");
    return { ...plain(food), per100g: row };
  });
  return { packing: { components, marks: [...marks.keys()].map((mark) => JSON.parse(mark)) }, packed };
}

interface Packed {
  readonly packing: Packing;
  readonly packed: readonly PackedFood[];
}

/** All of a food but its figures, as JSON would give it back. */
function plain(food: FoodInput): Omit<FoodInput, "per100g"> {
  const about = Object.entries(food).filter(([field]) => field !== "per100g");
  return JSON.parse(JSON.stringify(Object.fromEntries(about)));
}

/** Writes a figure as a row holds it; `placeOf` gives a mark its place among the marks. */
export function packFigure(figure: Figure | undefined, placeOf: (mark: object) => number): string {
  if (figure === undefined) return "-";
  if (figure === "trace") return figure;
  if (!isRecord(figure)) return asText(figure as Value);
  if (!("value" in figure)) return `:${placeOf(figure)}`;
  const { value, error, count, least, most, low, high, ...mark } = figure as FullFigure;
  const place = Object.keys(mark).length === 0 ? "" : String(placeOf(mark));
  const numbers = [error, count, least, most, low, high].map((each) =>
    each === undefined ? "" : asText(each),
  );
  return [asText(value), place, ...numbers].join(":").replace(/:+$/, "");
}

type FullFigure = Extract<Figure, { readonly value: unknown }>;

/** As it was written, where that is digits. */
function asText(value: Value): string {
  return typeof value === "string" && /^[\d./]+$/.test(value) ? value : exactText(exact(value));
}

/** The schema of packed foods, read to foods as they were written; what these hold is still to be read. */
export const packedSchema: () => Schema<Unpacked> = /* @__PURE__ */ once(() =>
  andThen(
    fields<Omit<PackedFoods, "format"> & { readonly format: (typeof PACKED_FORMATS)[number] }>({
      format: word(PACKED_FORMATS),
      components: list(componentId()),
      marks: list(record("what figures say beside their value")),
      foods: list(record<PackedFood>("a food")),
      retention: optional(retentionTableSchema()),
    }),
    ({ components, marks, foods, retention }, refuse) => {
      const read = foods.map((food, i) => {
        const at: Refuse = (message, hint) => refuse(message, hint, ["foods", i, "per100g"]);
        return { ...food, per100g: unpackFigures(food.per100g, { components, marks }, at) };
      });
      return { foods: read, retention };
    },
  ),
);

interface Unpacked {
  readonly foods: readonly FoodInput[];
  readonly retention?: RetentionTable | undefined;
}

export function record<T extends object = PackedMark>(expected: string): Schema<T> {
  return leaf(expected, { type: "object" }, isRecord, (given) => given as T);
}

/** Reads a row; `refuse` is told where it does not fit what it is read by. */
export function unpackFigures(
  packed: unknown,
  { components, marks }: Packing,
  refuse: (message: string, hint: string) => void = () => {},
  markAt: (place: number) => PackedMark | undefined = (place) => marks[place],
): FoodInput["per100g"] {
  const cells = typeof packed === "string" && packed !== "" ? packed.split(" ") : [];
  if (cells.length !== components.length)
    refuse(`${cells.length} figures for ${components.length} components`, "write each, or - for none");
  const figures: { [C in ComponentId]?: Figure } = {};
  components.forEach((id, i) => {
    const cell = cells[i] ?? "-";
    if (cell === "-") return;
    if (!cell.includes(":")) {
      figures[id] = cell;
      return;
    }
    const [value = "", place = "", ...numbers] = cell.split(":");
    const mark = place === "" ? {} : markAt(Number(place));
    if (mark === undefined)
      refuse(`there is no mark ${place} for ${id}`, "name marks by their place, from 0");
    if (numbers.length > NUMBERS.length)
      refuse(`${cell} for ${id} has more numbers than there are names`, `write ${NUMBERS.join(", ")}`);
    figures[id] = (value === "" ? mark : { value, ...mark, ...named(numbers) }) as Figure;
  });
  return figures;
}

function named(numbers: readonly string[]): PackedMark {
  const made: { [name: string]: unknown } = {};
  numbers.forEach((each, i) => {
    const name = NUMBERS[i];
    if (each !== "" && name !== undefined) made[name] = name === "count" ? Number(each) : each;
  });
  return made;
}
