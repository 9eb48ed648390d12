import { type Language, say } from "../../document/language.ts";
import { type ComponentId, components } from "../../food/components.ts";
import { type Exact, fraction, isZero, ONE, over, sum, ZERO } from "../../number/exact.ts";
import { componentIndex } from "../../sheet/plan.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { shownAmount } from "../../sheet/stated.ts";
import { knownComponents, type PageLine, pageLine } from "./lines.ts";
import { cellName, columnName, type Page, type PageCell, quotedName, rangeName } from "./page.ts";

/** Who eats, or the batch: a column of grams. */
export interface EaterColumn {
  readonly name: string;
  readonly sheet: Sheet;
}

/** A page, the lines on it, and where its totals stand. */
export interface RecipePage {
  readonly page: Page;
  readonly lines: readonly PageLine[];
  /** The cells of a column's portion as other pages name them: its figure, and whether it is a floor. */
  at(eaten: number, component: ComponentId): { readonly figure: string; readonly floor: string } | undefined;
}

/** Where the columns of grams begin: after line, state and written amount. */
const GRAMS = 3;

/**
 * The page of a recipe: lines down, grams of the batch or of each person across, then what 100 g of each
 * line hold. Totals are sums of products over these cells, so that any of them may be changed.
 */
export function recipePage(
  name: string,
  title: string,
  eaten: readonly EaterColumn[],
  language: Language,
): RecipePage {
  const tell = (phrase: string, gaps?: { readonly [gap: string]: string }): string =>
    say(language, phrase, gaps);
  const { lines, grams, amounts } = gather(eaten, language);
  const known = knownComponents(lines);
  const pot = GRAMS + eaten.length;
  // Where lines tell their own yields, the yield of all follows from them and from the amounts.
  const byLines = eaten.map(({ sheet: s }) => s.values.cooking.by === "lines");
  const own = byLines.includes(true) ? pot + 1 : undefined;
  const first = 5;
  const end = first + lines.length;
  const columnOf = (id: ComponentId): number => (own ?? pot) + 1 + known.indexOf(id);
  const gramsOf = (k: number, fixed = true): string => rangeName(GRAMS + k, first, end, fixed);
  const figuresOf = (column: number): string => rangeName(column, first, end);
  const potOf = rangeName(pot, first, end, true);
  const portionsAt = (k: number): string => cellName(1, GRAMS + k, true);
  const yieldAt = (k: number): string => cellName(2, GRAMS + k, true);

  const across = (of: (k: number) => PageCell): PageCell[] => eaten.map((_, k) => of(k));
  const rows: PageCell[][] = [
    [{ text: title, look: "title" }],
    [
      { text: tell("Portions") },
      undefined,
      undefined,
      ...across((k) => ({ value: portions(k), look: "input" })),
    ],
    [
      { text: tell("Cooked ÷ raw mass of what is cooked") },
      undefined,
      undefined,
      ...across(
        (k): PageCell =>
          byLines[k] ? { formula: yieldOf(k), value: yields(k) } : { value: yields(k), look: "input" },
      ),
    ],
    [],
    [
      ...["Line", "State", "Amount"].map((text): PageCell => ({ text: tell(text), look: "heading" })),
      ...eaten.map((each): PageCell => ({ text: tell("{name}, g", { name: each.name }), look: "heading" })),
      { text: tell("Goes into the pot: 1, added at serving: 0"), look: "heading" },
      ...ownColumn(() => ({ text: tell("Cooked ÷ raw mass of the line"), look: "heading" })),
      ...known.map((id): PageCell => {
        const { name: of, unit } = components[id];
        const gaps = { component: tell(of), unit: tell(unit) };
        return { text: tell("{component}, {unit} in 100 g", gaps), look: "heading" };
      }),
    ],
    ...lines.map((line, i): PageCell[] => [
      { text: line.name },
      { text: line.state },
      { text: amounts[i] ?? "" },
      ...across((k): PageCell => {
        const value = grams[k]?.[i];
        return value && { value, look: "input" };
      }),
      { value: line.added === "cooking" ? ONE : ZERO },
      ...ownColumn(() => (line.added === "cooking" ? { value: line.yieldFactor, look: "input" } : undefined)),
      ...known.map((id): PageCell => {
        const { value } = line.figures[componentIndex(id)] ?? {};
        return value === undefined ? undefined : typeof value === "string" ? { text: value } : { value };
      }),
    ]),
    [],
  ];
  const mass = (heading: string, of: (k: number) => string, value: (s: Sheet) => Exact): number => {
    const cells = across((k) => ({ formula: of(k), value: value(sheetOf(k)), look: "total" }));
    rows.push([{ text: tell(heading), look: "totalText" }, undefined, undefined, ...cells]);
    return rows.length - 1;
  };
  const weighed = mass(
    "As weighed in, g",
    (k) => `SUM(${gramsOf(k)})`,
    (s) => s.mass.raw,
  );
  const inPot = mass(
    "Of that in the pot, g",
    (k) => `SUMPRODUCT(${gramsOf(k)},${potOf})`,
    (s) =>
      sum(s.plan.lines.map(({ line }, i) => (line.added === "cooking" ? (s.values.grams[i] ?? ZERO) : ZERO))),
  );
  const massAt = (row: number, k: number): string => cellName(row, GRAMS + k, true);
  const changeOf = (k: number): string => `${massAt(inPot, k)}*(${yieldAt(k)}-1)`;
  const eatenRow = mass(
    "As eaten, g",
    (k) => `${massAt(weighed, k)}+${changeOf(k)}`,
    (s) => s.mass.cooked,
  );
  mass(
    "One portion, g",
    (k) => `${massAt(eatenRow, k)}/${portionsAt(k)}`,
    (s) => s.mass.portion,
  );

  const places = new Map<number, number>();
  const blank = Array.from({ length: own ?? pot }, (): PageCell => undefined);
  const figures = (
    heading: string,
    of: (id: ComponentId) => PageCell,
    floor: (id: ComponentId) => PageCell,
  ): void => {
    const head = (text: string): PageCell[] => [{ text, look: "totalText" }, ...blank];
    rows.push([...head(heading), ...known.map(of)], [...head(""), ...known.map(floor)]);
  };
  eaten.forEach(({ name: who, sheet: s }, k) => {
    const row = rows.length;
    const batch = (id: ComponentId): string => cellName(row, columnOf(id));
    const floorBelow = (id: ComponentId): PageCell => ({
      formula: cellName(row + 1, columnOf(id)),
      value: isFloor(s, id) ? tell("at least") : "",
      look: "totalText",
    });
    figures(
      tell("{name}: all of it", { name: who }),
      (id) => ({
        formula: totalOf(id, gramsOf(k), figuresOf(columnOf(id)), { potOf, change: changeOf(k) }),
        value: s.total(id).value,
        look: "total",
      }),
      (id) => ({
        formula: floorOf(id, k),
        value: isFloor(s, id) ? tell("at least") : "",
        look: "totalText",
      }),
    );
    places.set(k, rows.length);
    figures(
      tell("{name}: one portion", { name: who }),
      (id) => ({ formula: `${batch(id)}/${portionsAt(k)}`, value: s.portion(id).value, look: "total" }),
      floorBelow,
    );
    figures(
      tell("{name}: 100 g as eaten", { name: who }),
      (id) => ({
        formula: `IF(${massAt(eatenRow, k)}>0,${batch(id)}/${massAt(eatenRow, k)}*100,0)`,
        value: isZero(s.mass.cooked) ? ZERO : over(s.total(id).value, s.mass.cooked).times(fraction(100n)),
        look: "total",
      }),
      floorBelow,
    );
  });

  /** Whether some line that is in it says nothing of a component: only a number is a figure. */
  function floorOf(id: ComponentId, k: number): string {
    const column = columnOf(id);
    const told = `COUNTIFS(${gramsOf(k)},">0",${figuresOf(column)},">=0")<COUNTIF(${gramsOf(k)},">0")`;
    const inPart = lines.flatMap(({ figures: of }, i) =>
      of[componentIndex(id)]?.inPart ? [`${cellName(first + i, GRAMS + k, true)}>0`] : [],
    );
    const dried = id === "water" ? [`0-(${changeOf(k)})>${heldWater(k)}*1.000000000001`] : [];
    const all = [told, ...inPart, ...dried];
    const asked = all.length > 1 ? `OR(${all.join(",")})` : told;
    return `IF(${asked},"${tell("at least").replaceAll('"', '""')}","")`;
  }

  function ownColumn(of: () => PageCell): PageCell[] {
    return own === undefined ? [] : [of()];
  }

  function yieldOf(k: number): string {
    const raw = `SUMPRODUCT(${gramsOf(k)},${potOf})`;
    return `IF(${raw}>0,SUMPRODUCT(${gramsOf(k)},${potOf},${rangeName(own ?? pot, first, end, true)})/${raw},1)`;
  }

  function heldWater(k: number): string {
    return `SUMPRODUCT(${gramsOf(k)},${potOf},${figuresOf(columnOf("water"))})/100`;
  }

  function totalOf(
    id: ComponentId,
    of: string,
    per100g: string,
    { potOf: cooked, change }: { readonly potOf: string; readonly change: string },
  ): string {
    const brought = `SUMPRODUCT(${of},${per100g})/100`;
    // Water follows the mass, as far as the pot holds any.
    return id === "water"
      ? `${brought}+MAX(${change},0-SUMPRODUCT(${of},${cooked},${per100g})/100)`
      : brought;
  }

  function sheetOf(k: number): Sheet {
    return (eaten[k] as EaterColumn).sheet;
  }
  function portions(k: number): Exact {
    return sheetOf(k).portions;
  }
  function yields(k: number): Exact {
    return sheetOf(k).masses.yieldFactor;
  }

  return {
    page: {
      name,
      rows,
      widths: [30, 10, 18],
      otherWidth: 12,
      heading: { rows: first, columns: 1 },
    },
    lines,
    at: (k, id) => {
      const row = places.get(k);
      if (row === undefined || !known.includes(id)) return undefined;
      const cell = (of: number): string => `${quotedName(name)}!$${columnName(columnOf(id))}$${of + 1}`;
      return { figure: cell(row), floor: cell(row + 1) };
    },
  };
}

/** Whether a total is a floor: some line with an amount says nothing, or no more than a limit. */
export function isFloor(s: Sheet, id: ComponentId): boolean {
  const { missing, trace, below } = s.total(id);
  return missing.length + trace.length + below.length > 0;
}

interface Gathered {
  readonly lines: readonly PageLine[];
  /** By column, then by line. */
  readonly grams: readonly (readonly (Exact | undefined)[])[];
  readonly amounts: readonly string[];
}

/** Lines of all columns, those that are alike once, with the grams of each column. */
function gather(eaten: readonly EaterColumn[], language: Language): Gathered {
  const lines = new Map<string, PageLine>();
  const amounts: string[] = [];
  const grams = eaten.map(() => new Map<string, Exact>());
  eaten.forEach(({ sheet: s }, k) => {
    s.plan.lines.forEach((_, i) => {
      const made = pageLine(s, i, language);
      if (!lines.has(made.alike)) {
        lines.set(made.alike, made);
        amounts.push(eaten.length > 1 ? "" : shownAmount(s.lineAt(i).amount, s.origin.measures, language));
      }
      grams[k]?.set(made.alike, s.values.grams[i] ?? ZERO);
    });
  });
  const keys = [...lines.keys()];
  return {
    lines: [...lines.values()],
    grams: grams.map((of) => keys.map((key) => of.get(key))),
    amounts,
  };
}
