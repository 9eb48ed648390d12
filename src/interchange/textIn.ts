import { fault, kindOf } from "../number/error.ts";

/**
 * A file's text: whole, or piece by piece as it is read, in chunks of any size or line by line. Chunks are
 * told from lines by the line breaks in them, so that a text in chunks has at least one.
 */
export type TextIn = string | Iterable<string>;

/** Characters without a line break after which pieces are taken for lines. */
const NO_CHUNKS = 20_000;

/** @internal Refuses what is no text. Throws `foods-unreadable`. */
export function checkText(given: unknown, name: string): asserts given is TextIn {
  if (typeof given === "string") return;
  if (typeof given === "object" && given !== null && Symbol.iterator in given && !ArrayBuffer.isView(given))
    return;
  const hint = "give its text, or an iterable of its lines or of pieces of its text";
  throw fault("foods-unreadable", `expected the text of ${name}, got ${kindOf(given)}`, hint, [name]);
}

/** The pieces of a text, one after the other as they make it up. */
export function* pieces(text: TextIn, name: string): Generator<string> {
  if (typeof text === "string") {
    yield text;
    return;
  }
  let held: string[] | undefined = [];
  let length = 0;
  let end = "";
  for (const piece of text) {
    if (typeof piece !== "string") checkText(piece, name);
    if (held === undefined) {
      yield piece + end;
      continue;
    }
    held.push(piece);
    length += piece.length;
    const isChunks = piece.includes("\n");
    if (!isChunks && length < NO_CHUNKS) continue;
    if (!isChunks) end = "\n";
    for (const each of held) yield each + end;
    held = undefined;
  }
  // A short text without a line break: its pieces are lines.
  for (const each of held ?? []) yield `${each}\n`;
}

/** The lines of a text that are not empty, without carriage returns. */
export function* linesOf(text: TextIn, name: string): Generator<string> {
  let rest = "";
  for (const piece of pieces(text, name)) {
    const all = rest === "" ? piece : rest + piece;
    let from = 0;
    for (let at = all.indexOf("\n"); at >= 0; at = all.indexOf("\n", from)) {
      const line = withoutReturns(all.slice(from, at));
      if (line !== "") yield line;
      from = at + 1;
    }
    rest = all.slice(from);
  }
  const last = withoutReturns(rest);
  if (last !== "") yield last;
}

function withoutReturns(line: string): string {
  return line.includes("\r") ? line.replaceAll("\r", "") : line;
}
