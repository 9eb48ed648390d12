import { britishEnglish, type Language, say } from "../document/language.ts";
import { readLanguage } from "../document/readLanguage.ts";
import { components, isComponentId } from "../food/components.ts";
import { exact } from "../number/exact.ts";
import { figureCell, rangeFigure } from "../show/figure.ts";
import { type Cell, type Table, table } from "../show/table.ts";
import { boundCodes, statusCodes } from "./columns.ts";

/** Of a column what is shown. */
interface ShownColumn {
  readonly component: string;
  readonly unit: string;
  readonly value: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  readonly bound: Uint8Array;
}

/** Of columns what is shown. */
interface ShownColumns {
  readonly name?: string;
  readonly names?: readonly string[];
  readonly from?: number;
  readonly length: number;
  readonly factor?: Float64Array;
  readonly status?: Uint8Array;
  readonly columns: { readonly [component: string]: ShownColumn };
}

/**
 * What columns of doubles are made of: all that they hold is plain data of their own, which a clone or a worker
 * takes along; how they are shown stands beside it.
 */
export class ColumnData {
  /** Its rows as a table, the first of them where it is told how many will be shown. */
  toTables(told?: Language, most: number = Number.POSITIVE_INFINITY): readonly Table[] {
    const of = this as unknown as ShownColumns;
    const language = told === undefined ? britishEnglish : readLanguage(told);
    const count = Math.min(of.length, most);
    const columns = Object.values(of.columns);
    const { factor, names, name } = of;
    const rows = Array.from({ length: count }, (_, i): Cell[] => [
      names?.[i] ?? String((of.from ?? 0) + i),
      ...(factor ? [factorCell(factor[i], of.status?.[i], language)] : []),
      ...columns.map((column) => cellAt(column, i, language)),
    ]);
    return [
      table({
        ...(name !== undefined && { title: say(language, "{name}: one portion, row by row", { name }) }),
        columns: [
          { key: "row", heading: say(language, names ? "Recipe" : "Row") },
          ...(factor ? [{ key: "factor", heading: say(language, "Factor"), align: "end" as const }] : []),
          ...columns.map(({ component, unit }) => ({
            key: component,
            heading: say(language, isComponentId(component) ? components[component].name : component),
            unit,
            align: "end" as const,
          })),
        ],
        rows,
        more: of.length - count,
      }),
    ];
  }
}

function factorCell(factor: number | undefined, status: number | undefined, language: Language): Cell {
  if (factor === undefined || Number.isNaN(factor))
    return say(language, (statusCodes[status ?? 0] ?? "").replaceAll("-", " "));
  return figureCell(exact(factor), { language });
}

function cellAt({ value, least, most, bound }: ShownColumn, i: number, language: Language): Cell {
  const [figure, low, high] = [value[i], least[i], most[i]] as [number, number, number];
  const said = boundCodes[bound[i] as number];
  if (said === "unknown" || Number.isNaN(figure)) return figureCell(null, { language });
  if (said === "at-least" || said === "at-most") return figureCell(exact(figure), { language, tone: said });
  return said === "between" && !Number.isNaN(low) && !Number.isNaN(high)
    ? rangeFigure(exact(figure), exact(low), exact(high), { language })
    : figureCell(exact(figure), { language });
}
