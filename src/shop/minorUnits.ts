/**
 * How many decimals a currency's minor unit stands behind, where that is not 2: the yen has none, a
 * Kuwaiti dinar has 1000 fils.
 *
 * Source: ISO 4217, Codes for the representation of currencies and funds, list one, column "minor
 * unit". Read in a copy that is made from the maintenance agency's list (moneyphp/iso-currencies,
 * resources/current.php), not in the standard. Codes that the list gives no minor unit (gold, tests)
 * are left out.
 */
export const minorUnits: Readonly<Record<string, number>> = {
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  ISK: 0,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  PYG: 0,
  RWF: 0,
  UGX: 0,
  UYI: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
  CLF: 4,
  UYW: 4,
};
