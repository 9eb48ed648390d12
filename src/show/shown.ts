import type { Language } from "../document/language.ts";
import { ToldResult } from "../number/told.ts";
import { toHtml } from "./html.ts";
import { toMarkdown } from "./markdown.ts";
import type { Table } from "./table.ts";
import type { Showable, Tabular } from "./tabular.ts";
import { toText } from "./text.ts";

/** The most rows of a table that a notebook or console shows of itself; renderers show them all. */
const MOST_ROWS = 200;

const DISPLAY: unique symbol = /* @__PURE__ */ Symbol.for("Jupyter.display");

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
 * What an app's own result extends to be shown like the library's: it says its tables, and is then shown as
 * tables by a notebook cell and by Node's console, as well as by the renderers.
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
export abstract class Shown extends ToldResult implements Tabular {
  constructor() {
    super();
    // A call while the module loads would keep the module in every bundle.
    if (!Object.hasOwn(Shown.prototype, DISPLAY)) teach(Shown.prototype);
  }

  abstract toTables(language?: Language, most?: number): readonly Table[];
}

/** Gives a prototype what notebooks and Node's console ask for by symbol, so that its objects show their tables. */
export function teach(prototype: object): void {
  method(prototype, DISPLAY, notebookDisplay);
  method(prototype, Symbol.for("nodejs.util.inspect.custom"), (x) => toText(x, { rows: MOST_ROWS }));
}

function method(prototype: object, key: symbol, show: (x: Showable) => unknown): void {
  Object.defineProperty(prototype, key, {
    value(this: Showable) {
      return show(this);
    },
    configurable: true,
    writable: true,
  });
}
