export { americanEnglish } from "./table/american.ts";
export { type CsvHow, toCsv } from "./table/csv.ts";
export { type HtmlHow, toHtml } from "./table/html.ts";
export { type MarkdownHow, toMarkdown } from "./table/markdown.ts";
export { type RecordsHow, type TidyRecord, toRecords } from "./table/records.ts";
export { Shown } from "./table/shown.ts";
export {
  type Cell,
  type Column,
  type Figure as TableFigure,
  type Row,
  type Table,
  type TableInput,
  type Tone,
  table,
} from "./table/table.ts";
export type { DataRecord } from "./table/tableRecords.ts";
export type { Recordable, Showable, ShowHow, Tabular } from "./table/tabular.ts";
export { type TextHow, toText } from "./table/text.ts";
export type { Asked, Tidy, TidyRow } from "./table/tidy.ts";
