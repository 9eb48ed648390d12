/** A text without its brackets, and what stood in them. */
export interface Bracketed {
  readonly text: string;
  readonly inside: string[];
}

/** Takes the brackets out of a text; one that is never closed ends with the text. */
export function takeBrackets(text: string): Bracketed {
  const inside: string[] = [];
  let outside = "";
  let depth = 0;
  let from = 0;
  for (let i = 0; i < text.length; i++) {
    const character = text[i];
    if (character === "(" || character === "[") {
      if (depth === 0) from = i + 1;
      depth++;
    } else if ((character === ")" || character === "]") && depth > 0) {
      depth--;
      if (depth === 0) inside.push(text.slice(from, i).trim());
      if (depth === 0) outside += " ";
    } else if (depth === 0) outside += character;
  }
  if (depth > 0) inside.push(text.slice(from).trim());
  return {
    text: outside
      .replace(/\s+/g, " ")
      .replace(/ (?=[,.;:])/g, "")
      .trim(),
    inside: inside.filter((each) => each !== ""),
  };
}
