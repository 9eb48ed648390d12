export { type FdcFiles, foodsFromFdc } from "./interchange/fdc.ts";
export { type CsvColumn, type FoodsFromCsvOptions, foodsFromCsv } from "./interchange/foodsFromCsv.ts";
export { foodsToCsv } from "./interchange/foodsToCsv.ts";
export { type LinesOptions, linesFromText } from "./interchange/linesFromText.ts";
export type { LineKind, ReadAmount, ReadLine, StatedAmount } from "./interchange/readLine.ts";
export type { LeftOut, WhyLeftOut } from "./interchange/rows.ts";
export { type FoodsRead, foodsFromSr, type SrFiles } from "./interchange/sr.ts";
export type { TextIn } from "./interchange/textIn.ts";
export { type SheetsByName, type WorkbookOptions, workbook } from "./interchange/workbook/workbook.ts";
