/**
 * Lengths in millimetres, for tins and pans: no food is measured by them. The inch is 25.4 mm exactly,
 * the foot 12 inches.
 *
 * Source: NIST Handbook 44, Appendix C, General Tables of Units of Measurement (read in a copy); the
 * metre and its prefixes: BIPM, The International System of Units (SI Brochure), 9th edition, 2019
 * (unverified).
 */
export const lengths = { mm: "1", cm: "10", m: "1000", in: "25.4", ft: "304.8" } as const;
