import { text } from "../../document/leaves.ts";
import type { Refuse, Schema } from "../../document/schema.ts";

const LONGEST = 200;

/** The schema of a name that can stand in a table, in a key and in a path. */
export function name(): Schema<string> {
  return text(LONGEST, checkName);
}

/** Refuses what is no such name. */
export function checkName(given: string, refuse: Refuse): void {
  if (given.trim() === "") refuse("a name of no characters", "give a name");
  if (given.length > LONGEST) refuse(`a name of ${given.length} characters`, `use at most ${LONGEST}`);
  if (/\p{Cc}/u.test(given)) refuse("a name with control characters", "take them out");
  // Plain objects keyed by names cannot hold it: writing to it changes their prototype.
  if (given === "__proto__") refuse('a name that is "__proto__"', "use another name");
}
