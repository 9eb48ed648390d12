import { pieces, type TextIn } from "./textIn.ts";

/** What parts fields, and what encloses them. */
export interface CsvDialect {
  readonly delimiter: string;
}

/** A record of a file: its fields, and the line that it begins on, from 1. */
export interface CsvRecord {
  readonly fields: readonly string[];
  readonly line: number;
}

/** Delimiters that are told from the first record. */
const DELIMITERS = [",", ";", "\t"] as const;

/**
 * The records of a file of values between delimiters, as RFC 4180 has them: fields in quotation marks may
 * hold delimiters, line breaks and, doubled, quotation marks. Empty lines are passed over. `refuse` is
 * told of a quotation mark that nothing closes, or that something follows.
 */
export function* csvRecords(
  text: TextIn,
  name: string,
  refuse: (message: string, line: number) => void,
  delimiter?: string,
): Generator<CsvRecord> {
  let parts = delimiter;
  let fields: string[] = [];
  let field = "";
  let state: "start" | "plain" | "quoted" | "closed" = "start";
  let line = 1;
  let begun = 1;
  let isFirst = true;
  let held = "";
  const endRecord = (): CsvRecord | undefined => {
    fields.push(field);
    const made = { fields, line: begun };
    const isEmpty = fields.length === 1 && field === "" && state === "start";
    fields = [];
    field = "";
    state = "start";
    return isEmpty ? undefined : made;
  };
  for (const piece of pieces(text, name)) {
    let all = held + piece;
    held = "";
    if (isFirst) {
      if (parts === undefined && !all.includes("\n")) {
        held = all;
        continue;
      }
      all = all.replace(/^\uFEFF/, "");
      parts ??= likeliest(all);
      isFirst = false;
    }
    for (const c of all) {
      if (c === "\n") line += 1;
      if (state === "quoted") {
        if (c === '"') state = "closed";
        else field += c;
      } else if (c === '"' && (state === "closed" || field === "")) {
        if (state === "closed") field += c;
        state = "quoted";
      } else if (c === parts) {
        fields.push(field);
        field = "";
        state = "start";
      } else if (c === "\n") {
        const made = endRecord();
        if (made) yield made;
        begun = line;
      } else if (c !== "\r") {
        if (state === "closed") refuse("text follows a closing quotation mark", line);
        field += c;
        state = "plain";
      }
    }
  }
  if (held !== "") {
    parts ??= likeliest(held);
    yield* csvRecords(`${held}\n`, name, refuse, parts);
    return;
  }
  if (state === "quoted") refuse("a quotation mark that nothing closes", begun);
  if (state !== "start" || fields.length > 0 || field !== "") {
    const made = endRecord();
    if (made) yield made;
  }
}

/** The delimiter that the first record has most of, quoted fields left out. */
function likeliest(text: string): string {
  const head = (text.split("\n")[0] ?? "").replace(/"[^"]*"/g, "");
  const counted = DELIMITERS.map((each) => ({ each, count: head.split(each).length }));
  return counted.reduce((best, next) => (next.count > best.count ? next : best)).each;
}
