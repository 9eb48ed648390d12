/**
 * The regulated allergens of the European Union and the United States, in one list. `gluten` stands
 * for the EU's "cereals containing gluten"; `wheat` is the US entry, so a wheat food carries both.
 *
 * Sources: Regulation (EU) No 1169/2011, Annex II (14 entries); US Federal Food, Drug, and Cosmetic
 * Act 201(qq) as amended by FALCPA 2004 and the FASTER Act 2021 (9 entries).
 */
export const allergens = {
  gluten: { name: "cereals containing gluten", lists: ["eu"] },
  wheat: { name: "wheat", lists: ["us"] },
  crustaceans: { name: "crustaceans", lists: ["eu", "us"] },
  egg: { name: "egg", lists: ["eu", "us"] },
  fish: { name: "fish", lists: ["eu", "us"] },
  peanut: { name: "peanut", lists: ["eu", "us"] },
  soya: { name: "soya", lists: ["eu", "us"] },
  milk: { name: "milk", lists: ["eu", "us"] },
  nuts: { name: "tree nuts", lists: ["eu", "us"] },
  celery: { name: "celery", lists: ["eu"] },
  mustard: { name: "mustard", lists: ["eu"] },
  sesame: { name: "sesame", lists: ["eu", "us"] },
  sulphites: { name: "sulphur dioxide and sulphites", lists: ["eu"] },
  lupin: { name: "lupin", lists: ["eu"] },
  molluscs: { name: "molluscs", lists: ["eu"] },
} as const;

export type Allergen = keyof typeof allergens;
