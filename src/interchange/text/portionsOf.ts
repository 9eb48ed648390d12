import { type Exact, exact } from "../../number/exact.ts";
import { readQuantity } from "./quantity.ts";

const SERVES =
  /^(?:serves|makes|yields?|servings?|portions?|for|enough for|feeds)\b[\s:]*(?:about |approximately |approx\.? |around |~ ?)?/i;
const OF_WHAT =
  /^ ?(?:-|–)?(?: ?(?:people|persons?|servings?|portions?|adults?|pieces?|\p{L}+(?: \p{L}+)?))?\.?$/iu;

/** Whether a line says how many portions there are: `Serves 4`, `Makes 12 rolls`, `4 servings`. */
export function saysPortions(line: string): boolean {
  const said = SERVES.exec(line);
  const quantity = readQuantity(said ? line.slice(said[0].length) : line);
  if (!quantity || quantity.isArticle) return false;
  if (said) return OF_WHAT.test(quantity.rest);
  return /^ ?(?:people|persons?|servings?|portions?)\.?$/i.test(quantity.rest);
}

const IN_TITLE =
  /^(?!(?:enough|about|for)\b)\p{L}[^,:;\d]*?[\s(]+(?:for|serves|makes|feeds) ([\d/.]+|\p{L}+)(?: (?:people|persons?|portions?|servings?|adults?))?\)?$/iu;

/** The portions that a title ends with: `Porridge for two`, `Pancakes (serves 4)`. */
export function portionsInTitle(text: string): Exact | undefined {
  const said = IN_TITLE.exec(text)?.[1];
  return said !== undefined && saysPortions(`for ${said}`) && !/^an?$/i.test(said)
    ? portionsOf(said)
    : undefined;
}

/** The portions that a text tells, exactly; nothing where it tells none, or a range of them. */
export function portionsOf(text: string): Exact | undefined {
  const from = text.replace(SERVES, "");
  const at = /\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|a dozen|half a dozen)\b/i.exec(
    from,
  );
  const quantity = at ? readQuantity(from.slice(at.index)) : undefined;
  if (!quantity || quantity.least !== quantity.most) return undefined;
  const [whole = "", part] = quantity.least.split(" ");
  if (whole.includes(",")) return undefined;
  const value = part === undefined ? exact(whole) : exact(whole).plus(exact(part));
  return value.n > 0n ? value : undefined;
}
