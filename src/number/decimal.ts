/** decimal.js, for the few files that make or read a Decimal: a program that wants none leaves it behind. */
export { Decimal } from "decimal.js";
