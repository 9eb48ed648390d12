import { text, word } from "../document/leaves.ts";
import { read, readInto } from "../document/read.ts";
import { isRecord, refuseHole } from "../document/safe.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import { componentId } from "./componentSchema.ts";
import type { Figure, FoodInput } from "./food.ts";
import {
  PACKED_FORMAT,
  type PackedFood,
  type PackedFoods,
  type PackedMark,
  record,
  unpacked,
} from "./packed.ts";
import { type RetentionTable, retentionTableSchema } from "./retentionTable.ts";
import { figuresSchema, foodSchema } from "./schema.ts";

/** Foods of which no more is read yet than what they are called. */
export interface FoodsToRead {
  readonly foods: ReadonlyMap<string, () => FoodInput>;
  readonly retention: RetentionTable | undefined;
}

/**
 * Reads packed foods each when it is first asked for, and its figures when they are: nobody who opens a
 * table of thousands asks for all. What is wrong with a food is told by then.
 */
export function readWhenAsked({ foods, ...head }: PackedFoods): FoodsToRead {
  const packing = read(headSchema(), head, "food-malformed");
  const soundMarks = new Set<number>();
  const markAt = (place: number): PackedMark | undefined => {
    const mark = packing.marks[place];
    if (mark === undefined || soundMarks.has(place)) return mark;
    const figure = "below" in mark || "value" in mark ? mark : { value: "0", ...mark };
    read(figuresSchema(), { energy: figure }, "food-malformed", ["marks", place]);
    soundMarks.add(place);
    return mark;
  };
  refuseHole(foods, "food-malformed");
  const found = new Map<string, () => FoodInput>();
  const faults: Fault[] = [];
  foods.forEach((food: PackedFood, i) => {
    const path = ["foods", i];
    const given: unknown = isRecord(food) ? Object.getOwnPropertyDescriptor(food, "id")?.value : food;
    const id =
      typeof given === "string" && PLAIN_ID.test(given)
        ? given
        : readInto(faults, text(200), given, "food-malformed", [...path, "id"]);
    if (id === undefined) return;
    if (found.has(id)) {
      const hint = "give each food an id of its own";
      const message = `two foods are called ${quote(id)}`;
      faults.push({ code: "food-duplicate", path: [...path, "id"], message, hint });
    }
    found.set(id, () => {
      const { per100g: row, ...about } = food;
      const { per100g: _, ...sound } = read(foodSchema(), { ...about, per100g: {} }, "food-malformed", path);
      const refuse = (message: string, hint: string): void => {
        throw fault("food-malformed", message, hint, [...path, "per100g"]);
      };
      return unpacked({ ...sound, per100g: row }, packing, {
        refuse,
        markAt,
        check: (figures) => {
          const odd = Object.entries(figures).filter(([, figure]) => !isPlain(figure));
          read(figuresSchema(), Object.fromEntries(odd), "food-malformed", [...path, "per100g"]);
          return figures;
        },
      });
    });
  });
  throwIfAny(faults);
  return { foods: found, retention: packing.retention };
}

/** A figure of digits alone, with a mark that was read before it: nearly all are. */
function isPlain(figure: Figure): boolean {
  if (typeof figure === "string") return DIGITS.test(figure);
  if (typeof figure !== "object" || !("value" in figure)) return false;
  const { value, error = "0", least = "0", most = least, low, high } = figure as FullFigure;
  return (
    low === undefined &&
    high === undefined &&
    [value, error, least, most].every((each) => typeof each === "string" && DIGITS.test(each)) &&
    Number(least) <= Number(most)
  );
}

type FullFigure = Extract<Figure, { readonly value: unknown }>;

/** Ids that need no reading: nearly all. */
const PLAIN_ID = /^[\w.-]{1,200}$/;

const DIGITS = /^\d+(?:\.\d+)?$/;

const headSchema: () => Schema<Omit<PackedFoods, "foods">> = /* @__PURE__ */ once(() =>
  fields<Omit<PackedFoods, "foods">>({
    format: word([PACKED_FORMAT]),
    components: list(componentId()),
    marks: list(record("what figures say beside their value")),
    retention: optional(retentionTableSchema()),
  }),
);
