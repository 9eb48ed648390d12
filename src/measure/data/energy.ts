/**
 * Energy in kilojoules. The kilocalorie is the thermochemical one, 4.184 kJ exactly.
 *
 * Source: FAO/INFOODS tagname files, note to ENERC (read in a copy). EFSA 2013 uses 4.187 kJ, the
 * 15 °C calorie; food tables do not.
 */
export const energies = { J: "0.001", kJ: "1", MJ: "1000", kcal: "4.184" } as const;
