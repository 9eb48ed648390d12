import fc from "fast-check";
import { HyperFormula } from "hyperformula";
import { type ComponentId, components, recipe, type Sheet, sheet } from "steelyard";
import { portionsAt, portionsOfMany } from "steelyard/bulk";
import { starterFoods } from "steelyard/foods";
import { workbook } from "steelyard/interchange";
import { portionPlan } from "steelyard/plan";
import { describe, expect, it } from "vitest";
import { read, utils, type WorkBook } from "xlsx";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

type Value = string | number | boolean | null;

/** A workbook as a reader of its own opens it, and as a formula engine of its own works it out. */
class Opened {
  readonly book: WorkBook;
  readonly engine: HyperFormula;

  constructor(bytes: Uint8Array) {
    this.book = read(bytes, { type: "array", cellFormula: true, cellStyles: true, WTF: true });
    const pages = Object.fromEntries(this.book.SheetNames.map((name) => [name, this.#rows(name, true)]));
    this.engine = HyperFormula.buildFromSheets(pages, { licenseKey: "gpl-v3" });
  }

  /** What is written in the cells of a page; formulas as the engine takes them, or what they came to. */
  #rows(name: string, asFormulas: boolean): Value[][] {
    const page = this.book.Sheets[name] ?? {};
    const { e } = utils.decode_range(page["!ref"] ?? "A1");
    return Array.from({ length: e.r + 1 }, (_, r) =>
      Array.from({ length: e.c + 1 }, (_, c): Value => {
        const cell = page[utils.encode_cell({ r, c })];
        if (cell?.v === undefined) return null;
        if (asFormulas && cell.f) return `=${cell.f}`;
        return asFormulas && typeof cell.v === "string" ? `'${cell.v}` : (cell.v as Value);
      }),
    );
  }

  written(name: string): Value[][] {
    return this.#rows(name, false);
  }

  worked(name: string): Value[][] {
    return this.engine.getSheetValues(this.engine.getSheetId(name) ?? 0) as Value[][];
  }

  formulas(): string[] {
    return this.book.SheetNames.flatMap((name) =>
      Object.values(this.book.Sheets[name] ?? {}).flatMap((cell) => (cell?.f ? [String(cell.f)] : [])),
    );
  }

  set(name: string, row: number, column: number, value: number): void {
    this.engine.setCellContents({ sheet: this.engine.getSheetId(name) ?? 0, row, col: column }, value);
  }
}

const isNear = (a: unknown, b: number): boolean =>
  typeof a === "number" && Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));
const first = 5;

/** Differences between a page of a workbook and a sheet, for one column of grams. */
function wrong(rows: Value[][], s: Sheet, who: string, column = 3): unknown[] {
  const rowOf = (label: string): number => rows.findIndex(([text]) => text === label);
  const found: unknown[] = [];
  const check = (label: string, id: ComponentId, ours: number, isLeast: boolean): void => {
    const at = (rows[first - 1] ?? []).indexOf(`${components[id].name}, ${components[id].unit} in 100 g`);
    if (at < 0) return;
    const row = rowOf(label);
    if (!isNear(rows[row]?.[at], ours)) found.push([label, id, rows[row]?.[at], ours]);
    if ((rows[row + 1]?.[at] === "at least") !== isLeast)
      found.push([label, id, rows[row + 1]?.[at], isLeast]);
  };
  for (const id of Object.keys(components) as ComponentId[]) {
    const total = s.total(id);
    const isLeast = total.missing.length + total.trace.length + total.below.length > 0;
    check(`${who}: all of it`, id, total.value.toNumber(), isLeast);
    check(`${who}: one portion`, id, s.portion(id).value.toNumber(), isLeast);
    if (!s.mass.cooked.isZero()) check(`${who}: 100 g as eaten`, id, s.per100g(id).value.toNumber(), isLeast);
  }
  const mass = {
    "As weighed in, g": s.mass.raw,
    "As eaten, g": s.mass.cooked,
    "One portion, g": s.mass.portion,
  };
  for (const [label, ours] of Object.entries(mass))
    if (!isNear(rows[rowOf(label)]?.[column], ours.toNumber()))
      found.push([label, rows[rowOf(label)]?.[column], `${ours}`]);
  return found;
}

const foods = starterFoods.with([
  {
    id: "odd",
    name: "=1+1",
    source: '=HYPERLINK("x")',
    per100g: { iron: "trace", zinc: { below: 2 }, protein: "1/3" },
  },
  { id: "silent", name: '+Silent & <odd> _x0041_ "one"', source: "@made up", per100g: {} },
]);
const stock = recipe({
  name: "Stock",
  portions: 4,
  lines: [
    { food: "carrots-raw", amount: "200 g" },
    { food: "silent", amount: "10 g" },
  ],
});
/** The same where its beans and rice tell what becomes of them, and nothing tells of the whole. */
const byLines = { yieldFactor: undefined, beans: { yieldFactor: "2.4" }, rice: { yieldFactor: "0.6" } };
interface Changed {
  readonly beans?: object;
  readonly rice?: object;
  readonly portions?: number;
  readonly yieldFactor?: string | undefined;
}
const stew = ({ beans = {}, rice = {}, ...over }: Changed = {}): Sheet =>
  sheet(
    recipe({
      name: "Winter stew",
      portions: 3,
      yieldFactor: "0.8",
      lines: [
        { key: "beans", food: "kidney-beans-red-dry", amount: "150 g", ...beans },
        {
          ...rice,
          key: "rice",
          food: "rice-brown-long-dry",
          amount: "130 g",
          retention: { thiamin: "0.8", folate: "0.55" },
        },
        { key: "oil", food: "olive-oil", amount: "14 g" },
        { key: "stock", recipe: "stock", amount: "300 g" },
        { key: "odd", food: "odd", amount: "7 g", scaling: "per-portion" },
        { key: "seeds", food: "pumpkin-seeds", amount: "20 g", added: "serving" },
      ],
      ...over,
    }),
    foods,
    { recipes: { stock } },
  );

describe("a workbook of a sheet", () => {
  it("has every total as ours is, written and worked out by another engine", () => {
    const opened = new Opened(workbook(stew()));
    expect(opened.book.SheetNames).toEqual(["Winter stew", "Sources"]);
    expect(wrong(opened.written("Winter stew"), stew(), "Batch")).toEqual([]);
    expect(wrong(opened.worked("Winter stew"), stew(), "Batch")).toEqual([]);
  });

  it("moves every total with an amount, as an edit does", () => {
    const keys = ["beans", "rice", "oil", "stock", "odd", "seeds"];
    const edits = fc.array(fc.tuple(fc.nat(keys.length - 1), fc.integer({ min: 0, max: 9999 })), {
      minLength: 20,
      maxLength: 20,
    });
    fc.assert(
      fc.property(
        edits,
        fc.constantFrom<Changed>({}, { yieldFactor: "1.4" }, { yieldFactor: "0.05" }, byLines),
        (changes, over) => {
          let s = stew(over);
          const opened = new Opened(workbook(s));
          for (const [i, tenths] of changes) {
            s = s.edit({ [keys[i] as string]: `${tenths / 10} g` });
            opened.set("Winter stew", first + i, 3, tenths / 10);
          }
          if (s.mass.raw.isZero()) return;
          expect(wrong(opened.worked("Winter stew"), s, "Batch")).toEqual([]);
        },
      ),
      { numRuns: runs(3) },
    );
  });

  it("follows portions, the yield and a figure of a food", () => {
    const opened = new Opened(workbook(stew()));
    opened.set("Winter stew", 1, 3, 5);
    opened.set("Winter stew", 2, 3, 1.1);
    const five = stew({ portions: 5, yieldFactor: "1.1" });
    expect(wrong(opened.worked("Winter stew"), five, "Batch")).toEqual([]);
  });

  it("follows what each line tells of its own yield", () => {
    const opened = new Opened(workbook(stew(byLines)));
    expect(wrong(opened.written("Winter stew"), stew(byLines), "Batch")).toEqual([]);
    expect(wrong(opened.worked("Winter stew"), stew(byLines), "Batch")).toEqual([]);
    const column = (opened.written("Winter stew")[first - 1] ?? []).indexOf("Cooked ÷ raw mass of the line");
    opened.set("Winter stew", first, column, 2.1);
    opened.set("Winter stew", first, 3, 90);
    const other = stew({ ...byLines, beans: { yieldFactor: "2.1" } }).edit({ beans: "90 g" });
    expect(wrong(opened.worked("Winter stew"), other, "Batch")).toEqual([]);
  });

  it("leaves unknown cells empty, and calls totals over them a floor until the line goes", () => {
    const opened = new Opened(workbook(stew()));
    const rows = opened.written("Winter stew");
    const column = (rows[first - 1] ?? []).indexOf("iron, mg in 100 g");
    expect(rows[first + 4]?.[column]).toBe("trace");
    const zinc = (rows[first - 1] ?? []).indexOf("zinc, mg in 100 g");
    expect(rows[first + 4]?.[zinc]).toBe("below 2");
    const iodine = (rows[first - 1] ?? []).indexOf("calcium, mg in 100 g");
    expect(rows[first + 4]?.[iodine]).toBe(null);
    const floor = (): unknown => {
      const all = opened.worked("Winter stew");
      return all[all.findIndex(([text]) => text === "Batch: all of it") + 1]?.[column];
    };
    expect(floor()).toBe("at least");
    opened.set("Winter stew", first + 4, 3, 0);
    // The stock holds something that nothing is known of.
    expect(floor()).toBe("at least");
    opened.set("Winter stew", first + 3, 3, 0);
    expect(floor()).toBe("");
  });

  it("asks for nothing but what both standards define", () => {
    const names = new Opened(workbook(stew()))
      .formulas()
      .flatMap((each) => [...each.replace(/"[^"]*"/g, "").matchAll(/([A-Z.]+)\(/g)].map(([, name]) => name));
    // OpenFormula (OASIS, 2021) and ISO/IEC 29500-1, 18.17; the lists from memory, unverified.
    expect([...new Set(names)].sort()).toEqual([
      "COUNTIF",
      "COUNTIFS",
      "IF",
      "MAX",
      "OR",
      "SUM",
      "SUMPRODUCT",
    ]);
  });

  it("keeps hostile names as text", () => {
    for (const name of [
      "=1+1",
      "+1",
      "-1",
      "@x",
      "\t=1",
      "'=1",
      "a'b",
      "[x]:*?/\\",
      "_x0041_",
      "😀".repeat(40),
      "<b>&amp;",
      "\u202Ex",
    ]) {
      const named = sheet(
        recipe({
          name,
          portions: 1,
          lines: [
            { food: "odd", amount: "10 g" },
            { food: "silent", amount: "1 g" },
          ],
        }),
        foods,
      );
      const opened = new Opened(workbook({ [name]: named, [`${name} `]: named }));
      expect(opened.book.SheetNames).toHaveLength(3);
      const page = opened.book.SheetNames[0] as string;
      expect([...page].length).toBeLessThanOrEqual(31);
      const cells = opened.book.Sheets[page] ?? {};
      expect([cells.A1?.v, cells.A1?.f, cells.A1?.t]).toEqual([
        name.trim() === name ? name : cells.A1?.v,
        undefined,
        "s",
      ]);
      expect([cells.A6?.v, cells.A6?.f]).toEqual(["=1+1", undefined]);
      expect(cells.A7?.v).toBe('+Silent & <odd> _x0041_ "one"');
      expect(wrong(opened.worked(page), named, "Batch")).toEqual([]);
    }
  });

  it("is the same bytes each time, frozen and ready to print", () => {
    expect(workbook(stew())).toEqual(workbook(stew()));
    const { book } = new Opened(workbook(stew()));
    const names = book.Workbook?.Names?.map(({ Name, Ref }) => `${Name} ${Ref}`) ?? [];
    expect(names.some((each) => each.startsWith("_xlnm.Print_Area 'Winter stew'!$A$1:$"))).toBe(true);
    expect(names).toContain("_xlnm.Print_Titles 'Winter stew'!$A:$A,'Winter stew'!$1:$5");
  });

  it("says where figures come from on a page of its own", () => {
    const rows = new Opened(workbook(stew())).written("Sources");
    expect(rows.some((row) => row.includes('=HYPERLINK("x")'))).toBe(true);
    expect(rows.some((row) => row[2] === "protein" && row[3] === "1/3")).toBe(true);
    expect(
      rows.some(
        (row) =>
          row[1]?.toString().startsWith("Rice") && row[2] === "thiamin" && /derived/.test(String(row[5])),
      ),
    ).toBe(true);
  });

  it("is refused of what is none", () => {
    const code = (of: unknown) => errorOf(() => workbook(of as never)).code;
    expect([code(4), code({}), code({ a: 4 }), code(undefined)]).toEqual(Array(4).fill("workbook-malformed"));
  });
});

describe("a workbook of a plan", () => {
  const plan = portionPlan({
    meals: [
      { id: "supper", name: "Supper", dishes: { stew: stew(byLines) } },
      {
        id: "breakfast",
        name: "Breakfast",
        dishes: {
          oats: sheet(
            recipe({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "50 g" }] }),
            foods,
          ),
        },
      },
    ],
    people: [
      { id: "cox", name: "Cox", demands: [{ of: "energy", exactly: 1200 }] },
      { id: "lock", name: "=Heavy", demands: [{ of: "energy", exactly: 2400 }] },
    ],
  });

  it("has people as columns, and their days as sums", () => {
    const opened = new Opened(workbook(plan));
    const [day = "", ...pages] = opened.book.SheetNames;
    expect(pages).toHaveLength(3);
    for (const rows of [opened.written(day), opened.worked(day)]) {
      for (const [k, person] of plan.people.entries()) {
        for (const id of Object.keys(components) as ComponentId[]) {
          const row = rows.find(([name]) => name === components[id].name);
          if (!row) continue;
          const ours = plan.day(person.id).brings(id);
          expect([id, isNear(row[2 + 2 * k], ours.value.toNumber())]).toEqual([id, true]);
          const isLeast = ours.missing.length + ours.trace.length + ours.below.length > 0;
          expect([id, row[3 + 2 * k]]).toEqual([id, isLeast ? "at least" : ""]);
        }
      }
    }
  });
});

describe("a workbook of columns", () => {
  const energies = Float64Array.of(0, 450, 900);
  const columns = portionsAt(stew(), { energy: energies }, ["energy", "iron", "calcium"], {
    silent: "accept",
  });

  it("has a row for each portion, figures as numbers, and says what is a bound", () => {
    const opened = new Opened(workbook(columns));
    const [, heading = [], ...rows] = opened.written(opened.book.SheetNames[0] ?? "");
    expect(heading).toEqual([
      "Row",
      "Factor",
      "energy, kcal",
      "Bound",
      "iron, mg",
      "Bound",
      "calcium, mg",
      "Bound",
    ]);
    expect(rows[0]?.slice(0, 3)).toEqual(["0", "out of reach", null]);
    for (const i of [1, 2]) {
      const [row, factor, energy, , iron, bound] = rows[i] ?? [];
      expect([
        row,
        isNear(factor, columns.factor[i] as number),
        isNear(energy, energies[i] as number),
      ]).toEqual([String(i), true, true]);
      expect([isNear(iron, columns.columns.iron.value[i] as number), bound]).toEqual([true, "at least"]);
    }
  });

  it("has a page for each slice of many recipes, by their names", () => {
    const one = { name: "=1+1", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] };
    const [slice] = portionsOfMany([one], foods, ["iron", "iodine"]);
    if (!slice) throw new Error("no slice");
    const rows = new Opened(workbook(slice)).written("Table");
    expect(rows[2]).toEqual(["=1+1", 4.25, null]);
  });
});
