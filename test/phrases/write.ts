/** Writes the data file of phrases anew: `npm run phrases`. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../sources.ts";
import { collected, dataFile } from "./collected.ts";

writeFileSync(join(root, "src/show/data/phraseList.ts"), dataFile(collected()));
