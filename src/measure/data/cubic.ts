/**
 * Volumes by the inch, in millilitres, for tins, pans and cold stores: 2.54³ exactly for the cubic
 * inch, and 12³ of it for the cubic foot.
 *
 * Source: NIST Handbook 44, Appendix C, General Tables of Units of Measurement (read in a copy): the
 * inch is 2.54 cm exactly.
 */
export const cubicMeasures = { in3: "16.387064", ft3: "28316.846592" } as const;
