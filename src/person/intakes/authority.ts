import { word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { coded, type Schema } from "../../document/schema.ts";
import type { Authority } from "./table.ts";

/** Every authority. */
export const authorities: readonly Authority[] = ["uk", "us", "eu", "dach", "nordic", "anz", "who"];

/** The schema of an authority's name; its faults have the code `authority-unknown`. */
export function authorityName(): Schema<Authority> {
  return coded("authority-unknown", word(authorities));
}

/** Refuses what is no authority. Throws `authority-unknown`. */
export function checkAuthority(authority: Authority): void {
  read(authorityName(), authority, "authority-unknown", ["authority"]);
}
