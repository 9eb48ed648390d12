import type { Language } from "../document/language.ts";
import { Told } from "../number/told.ts";
import { toHtml } from "./html.ts";
import { toMarkdown } from "./markdown.ts";
import type { Table } from "./table.ts";
import type { Showable, Tabular } from "./tabular.ts";
import { toText } from "./text.ts";

/** The most rows of a table that a notebook or console shows of itself; renderers show them all. */
const MOST_ROWS = 200;

/** What a notebook chooses from: the same tables three ways. */
export interface NotebookDisplay {
  readonly "text/plain": string;
  readonly "text/markdown": string;
  readonly "text/html": string;
}

/** Tables as a notebook takes them, the first 200 rows of each. Throws `table-malformed`. */
export function notebookDisplay(x: Showable): NotebookDisplay {
  const how = { rows: MOST_ROWS };
  return { "text/plain": toText(x, how), "text/markdown": toMarkdown(x, how), "text/html": toHtml(x, how) };
}

/**
 * What every result extends that can be shown: it says its tables, and is then shown as tables by a
 * notebook cell and by Node's console, as well as by the renderers. `JSON.stringify` writes its fields and getters.
 *
 * @example
 * ```ts
 * class Rota extends Shown {
 *   override toTables(): readonly Table[] {
 *     return [table({ columns: [{ key: "who", heading: "Who" }], rows: [["Cox"]] })];
 *   }
 * }
 * console.log(new Rota());
 * ```
 *
 * ```text
 * Who
 * ───
 * Cox
 * ```
 */
export abstract class Shown extends Told implements Tabular {
  constructor() {
    super();
    teach(Shown.prototype);
  }

  abstract toTables(language?: Language, most?: number): readonly Table[];
}

/**
 * Gives the prototype, when the first object is made, what notebooks and consoles ask for by symbol.
 * Not written in the class: a key that is a symbol of someone else's has no type of its own to declare,
 * and a call while the module loads would keep the module in every bundle.
 */
function teach(prototype: object): void {
  const display = Symbol.for("Jupyter.display");
  if (Object.hasOwn(prototype, display)) return;
  method(prototype, display, notebookDisplay);
  method(prototype, Symbol.for("nodejs.util.inspect.custom"), (x) => toText(x, { rows: MOST_ROWS }));
}

function method(prototype: object, key: symbol, show: (x: Tabular) => unknown): void {
  Object.defineProperty(prototype, key, {
    value(this: Tabular) {
      return show(this);
    },
    configurable: true,
    writable: true,
  });
}
