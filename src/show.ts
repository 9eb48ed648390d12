export { americanEnglish } from "./show/american.ts";
export { type CsvHow, toCsv } from "./show/csv.ts";
export { type HtmlHow, toHtml } from "./show/html.ts";
export { type MarkdownHow, toMarkdown } from "./show/markdown.ts";
export { type RecordsHow, type TidyRecord, toRecords } from "./show/records.ts";
export { Shown } from "./show/shown.ts";
export {
  type Cell,
  type Column,
  type Figure as TableFigure,
  type Row,
  type Table,
  type TableInput,
  type Tone,
  table,
} from "./show/table.ts";
export type { DataRecord } from "./show/tableRecords.ts";
export { type Recordable, type Showable, type ShowHow, type Tabular, tablesOf } from "./show/tabular.ts";
export { type TextHow, toText } from "./show/text.ts";
export type { Asked, Tidy, TidyRow } from "./show/tidy.ts";
