import { table, toText } from "steelyard";

/** A table of one's own as text. */
export default (): string => toText(table({ columns: [{ key: "a", heading: "A" }], rows: [["b"]] }));
