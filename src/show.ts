export { americanEnglish } from "./show/american.ts";
export { type CsvOptions, toCsv } from "./show/csv.ts";
export { type HtmlOptions, toHtml } from "./show/html.ts";
export type { LibraryResult } from "./show/makers.ts";
export { type MarkdownOptions, toMarkdown } from "./show/markdown.ts";
export type { Parts, PlanPart, SchedulePart } from "./show/parts.ts";
export { type RecordsOptions, type TidyRecord, toRecords } from "./show/records.ts";
export { Shown } from "./show/shown.ts";
export { summary } from "./show/summary.ts";
export {
  type Cell,
  type Column,
  type Row,
  type Table,
  type TableFigure,
  type TableInput,
  type Tone,
  table,
} from "./show/table.ts";
export type { DataRecord } from "./show/tableRecords.ts";
export {
  type Recordable,
  type RowsOptions,
  type Showable,
  type ShowOptions,
  type Tabular,
  tablesOf,
} from "./show/tabular.ts";
export { type TextOptions, toText } from "./show/text.ts";
export type { Asked, Tidy, TidyRow } from "./show/tidy.ts";
