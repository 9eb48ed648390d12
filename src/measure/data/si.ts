/**
 * Metric masses in grams and volumes in millilitres.
 *
 * Source: BIPM, The International System of Units (SI Brochure), 9th edition, 2019: prefixes, the
 * gram, and the litre as 1 dm³. Exact by definition (unverified).
 */
export const siMasses = { µg: "0.000001", mg: "0.001", g: "1", kg: "1000" } as const;

export const siVolumes = { ml: "1", cl: "10", dl: "100", l: "1000" } as const;
