/**
 * Lets results of the library show themselves as tables in a notebook's cells and on Node's console:
 * `import "steelyard/notebook"`, once. Without it they show as one line.
 */
import { ColumnData } from "./bulk/columnData.ts";
import { Result } from "./number/result.ts";
import { Tally } from "./sheet/tally.ts";
import { teach } from "./show/shown.ts";

teach(Result.prototype);
teach(Tally.prototype);
teach(ColumnData.prototype);

export { type NotebookDisplay, notebookDisplay } from "./show/shown.ts";
