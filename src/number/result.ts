import { ToldResult } from "./told.ts";

/**
 * What every result extends: it says what it is (`is`), so that whoever shows it need not know its class, and
 * reads as one short line in a template string and on Node's console.
 */
export abstract class Result extends ToldResult {
  /** Kind and version: `steelyard/sheet@1`. */
  abstract readonly is: string;

  constructor() {
    super();
    teach(Result.prototype);
  }

  /** In a line, in British English. */
  abstract override toString(): string;
}

/**
 * Gives the prototype, when the first object is made, what Node's console asks for by symbol. Not written in
 * the class: a key that is a symbol of someone else's has no type of its own to declare.
 */
function teach(prototype: object): void {
  const inspected = Symbol.for("nodejs.util.inspect.custom");
  if (Object.hasOwn(prototype, inspected)) return;
  Object.defineProperty(prototype, inspected, {
    value(this: Result) {
      return this.toString();
    },
    configurable: true,
    writable: true,
  });
}
