/**
 * Avoirdupois masses in grams, exact by definition: the pound is 0.453 592 37 kg, the ounce 1/16
 * and the stone 14 of it.
 *
 * Source: UK Weights and Measures Act 1985, Schedule 1 Part V, as in force in 1991 (pound and ounce,
 * read at legislation.gov.uk). Stone: Hong Kong Weights and Measures Ordinance (cap. 68), which
 * prints the same three definitions (read in a copy).
 */
export const avoirdupois = { oz: "28.349523125", lb: "453.59237", st: "6350.29318" } as const;
