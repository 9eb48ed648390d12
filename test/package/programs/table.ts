import { table, toText } from "steelyard/show";

/** A table of one's own as text. */
export default (): string => toText(table({ columns: [{ key: "a", heading: "A" }], rows: [["b"]] }));
