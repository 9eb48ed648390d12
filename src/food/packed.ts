import { word } from "../document/leaves.ts";
import { isRecord } from "../document/safe.ts";
import { andThen, fields, leaf, list, once, optional, type Refuse, type Schema } from "../document/schema.ts";
import { toText } from "../number/digits.ts";
import { exact, type Value } from "../number/exact.ts";
import { componentId } from "./componentSchema.ts";
import { type ComponentId, componentIds } from "./components.ts";
import type { Figure, FoodInput } from "./food.ts";
import { type RetentionTable, retentionTableSchema } from "./retentionTable.ts";

/**
 * Foods in a third of the room: what their figures speak of is named once, and so is what figures say of
 * themselves beside their value (`presumed`, `calculated`, …).
 */
export interface PackedFoods {
  readonly format: typeof PACKED_FORMAT;
  /** What each figure of a food speaks of, in order. */
  readonly components: readonly ComponentId[];
  readonly marks: readonly Mark[];
  readonly foods: readonly PackedFood[];
  readonly retention?: RetentionTable;
}

/** What a figure says beside its value, or in its place. */
type Mark = { readonly [field: string]: unknown };

/**
 * A food whose figures stand between spaces: `325`, `-` where there is none, `trace`, `0:2` where the
 * third of the marks goes with it, `:2` where that is the figure.
 */
export interface PackedFood extends Omit<FoodInput, "per100g"> {
  readonly per100g: string;
}

export const PACKED_FORMAT = "steelyard-foods/2" as const;

/** Packs foods, as plain data. */
export function packFoods(foods: readonly FoodInput[], retention?: RetentionTable): PackedFoods {
  const components = componentIds.filter((id) => foods.some(({ per100g }) => per100g[id] !== undefined));
  const marks = new Map<string, number>();
  const placeOf = (mark: object): number => {
    const written = JSON.stringify(mark);
    const found = marks.get(written) ?? marks.size;
    marks.set(written, found);
    return found;
  };
  const packed = foods.map(({ per100g, ...rest }) => {
    return { ...rest, per100g: components.map((id) => packFigure(per100g[id], placeOf)).join(" ") };
  });
  return {
    format: PACKED_FORMAT,
    components,
    marks: [...marks.keys()].map((mark) => JSON.parse(mark)),
    foods: JSON.parse(JSON.stringify(packed)),
    ...(retention && { retention }),
  };
}

function packFigure(figure: Figure | undefined, placeOf: (mark: object) => number): string {
  if (figure === undefined) return "-";
  if (figure === "trace") return figure;
  if (isRecord(figure) && "value" in figure) {
    const { value, ...mark } = figure as Extract<Figure, { readonly value: Value }>;
    return Object.keys(mark).length === 0 ? asText(value) : `${asText(value)}:${placeOf(mark)}`;
  }
  return isRecord(figure) ? `:${placeOf(figure)}` : asText(figure as Value);
}

/** As it was written, where that is digits. */
function asText(value: Value): string {
  return typeof value === "string" && /^[\d./]+$/.test(value) ? value : toText(exact(value));
}

/** The schema of packed foods, read to foods as they were written; what these hold is still to be read. */
export const packedSchema: () => Schema<Unpacked> = /* @__PURE__ */ once(() =>
  andThen(
    fields<PackedFoods>({
      format: word([PACKED_FORMAT]),
      components: list(componentId()),
      marks: list(record("what figures say beside their value")),
      foods: list(record<PackedFood>("a food")),
      retention: optional(retentionTableSchema()),
    }),
    ({ components, marks, foods, retention }, refuse) => {
      const read = foods.map((food, i) => {
        const at: Refuse = (message, hint) => refuse(message, hint, ["foods", i, "per100g"]);
        return { ...food, per100g: unpackFigures(food.per100g, components, marks, at) };
      });
      return { foods: read, retention };
    },
  ),
);

interface Unpacked {
  readonly foods: readonly FoodInput[];
  readonly retention?: RetentionTable | undefined;
}

function record<T extends object = Mark>(expected: string): Schema<T> {
  return leaf(expected, { type: "object" }, isRecord, (given) => given as T);
}

function unpackFigures(
  packed: unknown,
  components: readonly ComponentId[],
  marks: readonly Mark[],
  refuse: Refuse,
): FoodInput["per100g"] {
  const figures = typeof packed === "string" && packed !== "" ? packed.split(" ") : [];
  if (figures.length !== components.length)
    refuse(`${figures.length} figures for ${components.length} components`, "write each, or - for none");
  const entries = components.flatMap((id, i): [ComponentId, Figure][] => {
    const [value = "-", place] = (figures[i] ?? "-").split(":");
    if (place === undefined) return value === "-" ? [] : [[id, value]];
    const mark = marks[Number(place)];
    if (mark === undefined)
      refuse(`there is no mark ${place} for ${id}`, "name marks by their place, from 0");
    return [[id, (value === "" ? mark : { value, ...mark }) as Figure]];
  });
  return Object.fromEntries(entries);
}
