import { isItem } from "./plainLine.ts";

/** The lines of a text that say something; an item of a list that goes on below, indented, is one line. */
export function physicalLines(text: string): string[] {
  const lines: string[] = [];
  let isInItem = false;
  for (const line of text.split(/\r\n|[\n\r\u2028\u2029]/)) {
    const isNew = isItem(line);
    if (line.trim() === "") isInItem = false;
    else if (isInItem && !isNew && /^\s+\S/.test(line)) lines.push(`${lines.pop() ?? ""} ${line.trim()}`);
    else {
      lines.push(line.trim());
      isInItem = isNew;
    }
  }
  return lines;
}
