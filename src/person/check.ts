/**
 * How a published figure was checked before it was set down here: read at the issuer's own page,
 * read in somebody else's copy of the table, or written from memory and not seen.
 */
export type Check = "memory" | { readonly at: "issuer" | "copy"; readonly read: string };
