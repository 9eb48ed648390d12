/** The zip writer that workbooks are packed with. */
export { strToU8, zipSync } from "fflate";
