import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { isLong } from "../runs.ts";

/** Where the published files lie, where they do: `sr28` as the USDA published them, each packed. */
const folder = new URL("../../../shared/fooddata/", import.meta.url);

export const isHere: boolean = existsSync(folder);

/** A file of SR28, of every food or of those of a slice. */
export function srFile(name: string): string {
  const text = new TextDecoder("latin1").decode(
    gunzipSync(readFileSync(new URL(`sr28/${name}.txt.gz`, folder))),
  );
  if (isLong || !["FOOD_DES", "NUT_DATA", "WEIGHT"].includes(name)) return text;
  return text
    .split("\n")
    .filter((line) => Number(line.slice(1, 6)) % 97 === 0)
    .join("\n");
}

/** A file of JSON there. */
export function sharedJson(name: string): unknown {
  return JSON.parse(readFileSync(new URL(name, folder), "utf8"));
}

/** The fields of the lines of a file of SR28. */
export function srRows(text: string): string[][] {
  return text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) =>
      line
        .replaceAll("\r", "")
        .split("^")
        .map((field) => field.replace(/^~|~$/g, "")),
    );
}
