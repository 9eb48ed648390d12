import { word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { coded, type Schema } from "../../document/schema.ts";
import type { Authority } from "./table.ts";

/** Every authority. */
export const authorities: readonly Authority[] = ["uk", "us", "eu", "nordic", "who"];

/** What of an authority's figures is not here, where the greater part was not read. */
export const missing: { readonly [A in Authority]?: string } = {
  nordic:
    "Of the Nordic countries only calcium, folate, iodine, magnesium, potassium, selenium, zinc and vitamins D and E are here: that nothing is said of protein, iron, sodium or other vitamins does not mean that nothing is recommended.",
  who: "Of WHO and FAO some minerals, vitamins of children under 7, and goals for populations are here: that nothing is said of protein, energy or other vitamins does not mean that nothing is recommended.",
};

/** The schema of an authority's name; its faults have the code `authority-unknown`. */
export function authorityName(): Schema<Authority> {
  return coded("authority-unknown", word(authorities));
}

/** Refuses what is no authority. Throws `authority-unknown`. */
export function checkAuthority(authority: Authority): void {
  read(authorityName(), authority, "authority-unknown", ["authority"]);
}
