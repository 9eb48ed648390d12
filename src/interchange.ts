export { type LinesOptions, linesFromText } from "./interchange/linesFromText.ts";
export type { LineKind, ReadAmount, ReadLine, StatedAmount } from "./interchange/readLine.ts";
