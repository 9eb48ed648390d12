import { toHtml } from "./html.ts";
import { toMarkdown } from "./markdown.ts";
import type { Table } from "./table.ts";
import type { Tabular } from "./tabular.ts";
import { toText } from "./text.ts";

const jupyterDisplay: unique symbol = /* @__PURE__ */ Symbol.for("Jupyter.display");
const nodeInspect: unique symbol = /* @__PURE__ */ Symbol.for("nodejs.util.inspect.custom");

/** The most rows of a table that a notebook or console shows of itself; renderers show them all. */
const MOST_ROWS = 200;

/** What a notebook chooses from: the same tables three ways. */
export interface NotebookDisplay {
  readonly "text/plain": string;
  readonly "text/markdown": string;
  readonly "text/html": string;
}

/**
 * What every result extends that can be shown: it says its tables, and is then shown as tables by a
 * notebook cell and by Node's console, as well as by the renderers.
 */
export abstract class Shown implements Tabular {
  abstract toTables(): readonly Table[];

  [jupyterDisplay](): NotebookDisplay {
    const how = { rows: MOST_ROWS };
    return {
      "text/plain": toText(this, how),
      "text/markdown": toMarkdown(this, how),
      "text/html": toHtml(this, how),
    };
  }

  [nodeInspect](): string {
    return toText(this, { rows: MOST_ROWS });
  }
}
