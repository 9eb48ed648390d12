import { anyText, text as textLeaf, word } from "../document/leaves.ts";
import { read, readInto } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, choice, fields, leaf, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import type { ComponentId } from "../food/components.ts";
import type { Figure, FoodInput } from "../food/food.ts";
import type { PackedFood } from "../food/packed.ts";
import { figuresSchema, foodSchema } from "../food/schema.ts";
import { trustedPacked } from "../food/table.ts";
import { exactText } from "../number/digits.ts";
import { type Fault, quote, throwIfAny } from "../number/error.ts";
import { exact, over } from "../number/exact.ts";
import { unguardedText } from "../show/csv.ts";
import { aboutFields, ESTIMATE, type Heading, isJsonField, readHeading } from "./csvHeading.ts";
import { type CsvRecord, csvRecords } from "./csvRecords.ts";
import { LeftOuts, Rows } from "./rows.ts";
import type { FoodsRead } from "./sr.ts";
import { checkText, type TextIn } from "./textIn.ts";
import { figureUnit, toUnitOf } from "./units.ts";

/** What a column of somebody else's holds: a component in a unit, or a field of a food; `null` leaves it out. */
export type CsvColumn =
  | { readonly component: ComponentId; readonly unit: string }
  | keyof Omit<FoodInput, "per100g">
  | null;

/** Options of {@link foodsFromCsv}. */
export interface FoodsFromCsvOptions {
  /** What columns hold whose headings do not say it, by heading. */
  readonly columns?: { readonly [heading: string]: CsvColumn };
  /** Where the foods come from, where no column says so. */
  readonly source?: string;
  /** What figures are of: 100 g unless told. Of 100 ml, each food needs its density. */
  readonly per?: "100 g" | "100 ml";
  /** Told from the headings unless given. */
  readonly delimiter?: "," | ";" | "\t";
  readonly decimal?: "." | ",";
  /** What stands for an unknown figure beside an empty field: `-`, `N`. */
  readonly unknown?: readonly string[];
}

const howSchema: () => Schema<FoodsFromCsvOptions> = /* @__PURE__ */ once(() => {
  const component = fields<Exclude<CsvColumn, string | null>>({
    component: componentId(),
    unit: textLeaf(20),
  });
  const field = word(aboutFields);
  const nothing = leaf(
    "null",
    { type: "null" },
    (given): given is null => given === null,
    (given) => given,
  );
  const column = choice<CsvColumn>(
    [component, field, nothing],
    (given) => (given === null ? nothing : isRecord(given) ? component : field),
    "what a column holds",
  );
  return fields<FoodsFromCsvOptions>({
    columns: optional(byName(column)),
    source: optional(textLeaf()),
    per: optional(word(["100 g", "100 ml"])),
    delimiter: optional(word([",", ";", "\t"])),
    decimal: optional(word([".", ","])),
    unknown: optional(list(anyText())),
  });
});

/** Faults after which no more are looked for. */
const MOST_FAULTS = 100;

/**
 * Foods from a table of values between commas, semicolons or tabs (RFC 4180), whole or piece by piece. The
 * first record has headings: INFOODS tagnames or ids of components with their unit (`FE (mg)`,
 * `ENERC (kJ)`), and fields of a food (`id`, `name`, `state`, `group`, `source`, …); `columns` says what
 * others hold. A figure without a unit is refused, and vitamin D in IU counts 40 to the microgram. An empty
 * field is unknown, `tr` a trace, `<2` below a limit, and brackets mark an estimate. A food needs a name;
 * its id is its name where it has none. What {@link foodsToCsv} writes is read back as it was.
 *
 * Throws `foods-unreadable` and the codes of a food, each with the food and the line. `leftOut` counts what
 * found no component.
 *
 * @example
 * ```ts
 * const { foods } = foodsFromCsv("name,ENERC (kJ),FE (mg),CA (mg)\nOats,1590,[4.1],tr", { source: "own analysis" });
 * console.log(JSON.stringify(foods.get("Oats").per100g.iron)); // => {"value":"4.1","calculated":"an estimate, as its table marks it"}
 * ```
 */
export function foodsFromCsv(text: TextIn, how: FoodsFromCsvOptions = {}): FoodsRead {
  const asked = read(howSchema(), how, "foods-unreadable");
  checkText(text, "the table");
  const faults: Fault[] = [];
  const tell = (message: string, hint: string, path: readonly (string | number)[]): void => {
    faults.push({ code: "foods-unreadable", path: [...path], message, hint });
    if (faults.length > MOST_FAULTS) throwIfAny(faults);
  };
  const broken = (message: string, line: number): void =>
    tell(`line ${line}: ${message}`, "put each field that holds one in quotation marks, doubled inside", [
      "line",
      line,
    ]);
  const records = csvRecords(text, "the table", broken, asked.delimiter);
  const head = records.next();
  const written = head.done ? [] : head.value.fields.map((each) => unguardedText(each.trim()));
  const headings = written.map((each): Heading => headingOf(each, asked));
  written.forEach((each, i) => {
    if (headings[i]?.kind === "no-unit")
      tell(
        `the column ${quote(each)} names no unit`,
        `write it in the heading: ${quote(`${each} (mg)`)}, or say it in columns`,
        ["line", 1, each],
      );
  });
  const twice = written.find((each, i) => each !== "" && written.indexOf(each) !== i);
  if (twice !== undefined)
    tell(`two columns are called ${quote(twice)}`, "give each a heading of its own", ["line", 1, twice]);
  throwIfAny(faults);
  const reader = new Reader(written, headings, asked, tell, faults);
  for (const record of records) reader.add(record);
  throwIfAny(faults);
  return reader.made();
}

function headingOf(written: string, { columns = {} }: FoodsFromCsvOptions): Heading {
  const told = Object.hasOwn(columns, written) ? columns[written] : undefined;
  if (told === undefined) return readHeading(written);
  if (told === null) return { kind: "none", unit: "" };
  if (typeof told === "string") return { kind: "about", field: told };
  const unit = figureUnit(told.unit);
  return unit === undefined
    ? { kind: "none", unit: told.unit }
    : { kind: "component", component: told.component, unit };
}

type Tell = (message: string, hint: string, path: readonly (string | number)[]) => void;

/** Reads one record after the other into foods. */
class Reader {
  readonly #written: readonly string[];
  readonly #headings: readonly Heading[];
  readonly #how: FoodsFromCsvOptions;
  readonly #tell: Tell;
  readonly #faults: Fault[];
  readonly #foods = new Map<string, Omit<FoodInput, "per100g">>();
  readonly #rows = new Rows();
  readonly #left = new LeftOuts();
  /** Columns with figures in the component's own unit, before those in another. */
  readonly #order: readonly number[];
  #figures = 0;

  constructor(
    written: readonly string[],
    headings: readonly Heading[],
    how: FoodsFromCsvOptions,
    tell: Tell,
    faults: Fault[],
  ) {
    this.#written = written;
    this.#headings = headings;
    this.#how = how;
    this.#tell = tell;
    this.#faults = faults;
    const isOther = (i: number): number => {
      const heading = headings[i];
      return heading?.kind === "component" && toUnitOf(heading.component, "1", heading.unit) !== "1" ? 1 : 0;
    };
    this.#order = headings.map((_, i) => i).sort((a, b) => isOther(a) - isOther(b) || a - b);
  }

  made(): FoodsRead {
    const foods = [...this.#foods].map(
      ([id, about]): PackedFood => ({ ...about, per100g: this.#rows.row(id) }),
    );
    const { marks } = this.#rows;
    return {
      foods: trustedPacked({ foods, components: this.#rows.components, marks }),
      figures: this.#figures,
      leftOut: this.#left.list(),
    };
  }

  add({ fields: cells, line }: CsvRecord): void {
    const about: { [field: string]: unknown } = {};
    let details: { readonly [id: string]: unknown } = {};
    const at = (what: string): (string | number)[] => ["line", line, what];
    cells.forEach((cell, i) => {
      const heading = this.#headings[i];
      const text = unguardedText(cell);
      if (text.trim() === "") return;
      if (heading === undefined)
        this.#tell(`line ${line}: more fields than headings`, "quote fields that hold the delimiter", [
          "line",
          line,
        ]);
      else if (heading.kind === "about")
        about[heading.field] = isJsonField(heading.field) ? this.#json(text, at(heading.field)) : text;
      else if (heading.kind === "details") {
        const told = this.#json(text, at("figures"));
        if (isRecord(told)) details = told;
      }
    });
    const name = typeof about.name === "string" ? about.name : undefined;
    const id = typeof about.id === "string" ? about.id : name;
    const food = { ...about, id, source: about.source ?? this.#how.source, per100g: {} };
    const before = this.#faults.length;
    const sound = readInto(this.#faults, foodSchema(), food, "food-malformed", ["line", line]);
    if (sound === undefined) {
      for (const each of this.#faults.slice(before)) {
        const at = this.#faults.indexOf(each);
        this.#faults[at] = { ...each, message: `${id ?? `line ${line}`}: ${each.message}` };
      }
      if (this.#faults.length > MOST_FAULTS) throwIfAny(this.#faults);
      return;
    }
    if (this.#foods.has(sound.id)) {
      const message = `two foods are called ${quote(sound.id)}`;
      this.#faults.push({
        code: "food-duplicate",
        path: at("id"),
        message,
        hint: "give each an id of its own",
      });
      return;
    }
    const { per100g: _, ...kept } = sound;
    this.#foods.set(sound.id, kept);
    this.#readFigures(cells, sound, details, line);
  }

  #json(text: string, path: readonly (string | number)[]): unknown {
    try {
      return JSON.parse(text);
    } catch {
      this.#tell(`line ${path[1]}: ${quote(path[2])} is no JSON`, "write it as foodsToCsv does", path);
      return undefined;
    }
  }

  #readFigures(
    cells: readonly string[],
    food: FoodInput,
    details: { readonly [id: string]: unknown },
    line: number,
  ): void {
    const put = (id: ComponentId, figure: Figure, i: number, unit: string): void => {
      if (this.#rows.set(food.id, id, figure)) this.#figures += 1;
      else
        this.#left.add({
          name: this.#written[i] ?? "",
          code: this.#written[i] ?? "",
          unit,
          why: "told-elsewhere",
        });
    };
    for (const i of this.#order) {
      const heading = this.#headings[i];
      const cell = (cells[i] ?? "").trim();
      if (heading === undefined || cell === "" || this.#how.unknown?.includes(cell)) continue;
      if (heading.kind === "none") {
        const code = this.#written[i] ?? "";
        const why =
          heading.unit !== "" && readHeading(code.replace(/\s*[([,].*$/s, "")).kind === "no-unit"
            ? "unit"
            : "no-component";
        this.#left.add({ name: code, code, unit: heading.unit, why });
      }
      if (heading.kind !== "component") continue;
      const { component: id, unit } = heading;
      const figure = this.#figure(unguardedText(cell), id, unit, food, line);
      if (figure === undefined) continue;
      const more = Object.hasOwn(details, id) ? details[id] : undefined;
      put(id, isRecord(more) ? this.#with(figure, more, id, food, line) : figure, i, unit);
    }
  }

  /** A figure with what its details say of it. */
  #with(figure: Figure, more: object, id: ComponentId, food: FoodInput, line: number): Figure {
    const plain = isRecord(figure) ? figure : { value: figure };
    const made = { [id]: { ...plain, ...more } };
    const read = readInto(this.#faults, figuresSchema(), made, "food-malformed", ["line", line, food.id]);
    return read?.[id] ?? figure;
  }

  #figure(cell: string, id: ComponentId, unit: string, food: FoodInput, line: number): Figure | undefined {
    if (/^(?:tr|trace)\.?$/i.test(cell)) return "trace";
    const [, bracket = "", less = "", digits = ""] =
      /^([[(]?)\s*(<?)\s*([\d.,/]+)\s*[\])]?$/.exec(cell) ?? [];
    const plain = this.#how.decimal === "," ? digits.replace(",", ".") : digits;
    if (!/^(?:\d+(?:\.\d+)?|\.\d+|\d+\/[1-9]\d*)$/.test(plain)) {
      const isComma = this.#how.decimal !== "," && /^\d+,\d+$/.test(digits);
      const hint = isComma
        ? 'say decimal: ","'
        : "write digits, tr, or <2; leave it empty where it is unknown, or say what else means that in unknown";
      this.#tell(`${food.name}: ${quote(cell)} in ${quote(id)} is not a figure`, hint, ["line", line, id]);
      return undefined;
    }
    const own = toUnitOf(id, plain, unit);
    if (own === undefined) {
      const index = this.#headings.findIndex(
        (each) => each.kind === "component" && each.component === id && each.unit === unit,
      );
      const code = this.#written[index] ?? id;
      this.#left.add({ name: code, code, unit, why: "unit" });
      return undefined;
    }
    const { per = "100 g" } = this.#how;
    if (per === "100 ml" && food.density === undefined) {
      this.#tell(`${food.name}: figures of 100 ml, and no density`, "give a column density, in g per ml", [
        "line",
        line,
        "density",
      ]);
      return undefined;
    }
    const value = per === "100 ml" ? exactText(over(exact(own), exact(food.density ?? "1"))) : own;
    if (less !== "") return exact(value).isZero() ? { value: "0" } : { below: value };
    const derived =
      per === "100 ml"
        ? { derived: `from 100 ml, of ${exactText(exact(food.density ?? "1"))} g per ml` }
        : {};
    if (bracket !== "") return { value, calculated: ESTIMATE, ...derived };
    return per === "100 ml" ? { value, ...derived } : value;
  }
}
