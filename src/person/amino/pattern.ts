import type { ComponentId } from "../../food/components.ts";
import type { Check } from "../check.ts";

/** What patterns of amino acids are written for: methionine with cystine and phenylalanine with tyrosine as one. */
export type AminoName =
  | "histidine"
  | "isoleucine"
  | "leucine"
  | "lysine"
  | "sulphur amino acids"
  | "aromatic amino acids"
  | "threonine"
  | "tryptophan"
  | "valine";

/** The components that each is summed of. */
export const aminoAcids: { readonly [A in AminoName]: readonly ComponentId[] } = {
  histidine: ["histidine"],
  isoleucine: ["isoleucine"],
  leucine: ["leucine"],
  lysine: ["lysine"],
  "sulphur amino acids": ["methionine", "cystine"],
  "aromatic amino acids": ["phenylalanine", "tyrosine"],
  threonine: ["threonine"],
  tryptophan: ["tryptophan"],
  valine: ["valine"],
};

export type PatternId =
  | "who-2007-adult"
  | "fao-2013-infant"
  | "fao-2013-child"
  | "fao-2013-older"
  | "iom-2002"
  | "fao-1991-preschool";

/** A reference protein: mg of each indispensable amino acid in 1 g of protein. */
export interface AminoPattern {
  readonly id: PatternId;
  readonly name: string;
  /** Whom the pattern was made for. */
  readonly for: string;
  readonly source: string;
  readonly check: Check;
  readonly mgPerGram: { readonly [A in AminoName]: string };
}
