/// <reference path="./convert-units.d.ts" />
/** convert-units, of which two tables of plain data serve; its index reads a global that only Node has. */
export { default as temperature } from "convert-units/lib/definitions/temperature.js";
export { default as time } from "convert-units/lib/definitions/time.js";
