/**
 * Makes a structured clone refuse, in words that say what to send instead: `structuredClone` and `postMessage`
 * throw a DataCloneError with the description of a symbol that they meet as a value. A clone keeps no
 * methods and no private fields, and would pass for the thing. JSON passes over it.
 *
 * It must stand in the first field of its own that an object has, or another fault is told first.
 */
export const uncloned: symbol = /* @__PURE__ */ Symbol(
  "a clone would lose what this holds: send what its toJSON() gives, which openSheet, openPlan or foodTable opens; this",
);
