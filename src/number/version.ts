/** The version of the package, as its manifest has it: what a paper names. */
export const version = "0.1.0";
