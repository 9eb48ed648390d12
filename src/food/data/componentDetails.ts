/**
 * Single sugars, fatty acids, vitamers and sterols, which few recipes ask for: id, tagname, name, unit,
 * group, then the unit that INFOODS gives the tagname where it is another, and the list that the tagname
 * is from where that is not INFOODS's: `SR28`, or `own`.
 *
 * Sources: INFOODS Food Component Identifiers (1989, with revisions to 2010) in the published tagname files;
 * USDA National Nutrient Database for Standard Reference, Release 28 (2016), file NUTR_DEF. Those that INFOODS
 * has no tagname for bear SR28's or our own. A fatty acid of "all isomers" holds those that are named apart.
 */
export const componentDetails = `
sucrose|SUCS|sucrose|g|carbohydrate
glucose|GLUS|glucose|g|carbohydrate
fructose|FRUS|fructose|g|carbohydrate
galactose|GALS|galactose|g|carbohydrate
lactose|LACS|lactose|g|carbohydrate
maltose|MALS|maltose|g|carbohydrate
vitaminD2|ERGCAL|vitamin D2|µg|vitamin
vitaminD3|CHOCAL|vitamin D3|µg|vitamin
betaTocopherol|TOCPHB|beta-tocopherol|mg|vitamin
gammaTocopherol|TOCPHG|gamma-tocopherol|mg|vitamin
deltaTocopherol|TOCPHD|delta-tocopherol|mg|vitamin
alphaTocotrienol|TOCTRA|alpha-tocotrienol|mg|vitamin
betaTocotrienol|TOCTRB|beta-tocotrienol|mg|vitamin
gammaTocotrienol|TOCTRG|gamma-tocotrienol|mg|vitamin
deltaTocotrienol|TOCTRD|delta-tocotrienol|mg|vitamin
menaquinone4|MK4|menaquinone-4|µg|vitamin
dihydrophylloquinone|VITK1D|dihydrophylloquinone|µg|vitamin
hydroxyproline|HYP|hydroxyproline|g|aminoAcid|mg
stigmasterol|STID7|stigmasterol|mg|other
campesterol|CAMD5|campesterol|mg|other
betaSitosterol|SITSTR|beta-sitosterol|mg|other
butyricAcid|F4D0|butyric acid (4:0)|g|fattyAcid
caproicAcid|F6D0|caproic acid (6:0)|g|fattyAcid
caprylicAcid|F8D0|caprylic acid (8:0)|g|fattyAcid
capricAcid|F10D0|capric acid (10:0)|g|fattyAcid
lauricAcid|F12D0|lauric acid (12:0)|g|fattyAcid
tridecanoicAcid|F13D0|tridecanoic acid (13:0)|g|fattyAcid
myristicAcid|F14D0|myristic acid (14:0)|g|fattyAcid
pentadecanoicAcid|F15D0|pentadecanoic acid (15:0)|g|fattyAcid
palmiticAcid|F16D0|palmitic acid (16:0)|g|fattyAcid
margaricAcid|F17D0|margaric acid (17:0)|g|fattyAcid
stearicAcid|F18D0|stearic acid (18:0)|g|fattyAcid
arachidicAcid|F20D0|arachidic acid (20:0)|g|fattyAcid
behenicAcid|F22D0|behenic acid (22:0)|g|fattyAcid
lignocericAcid|F24D0|lignoceric acid (24:0)|g|fattyAcid
fa14d1|F14D1|14:1|g|fattyAcid
fa15d1|F15D1|15:1|g|fattyAcid
fa16d1|F16D1|16:1, all isomers|g|fattyAcid
fa16d1c|F16D1C|16:1, cis|g|fattyAcid
fa16d1t|F16D1T|16:1, trans|g|fattyAcid
fa17d1|F17D1|17:1|g|fattyAcid
fa18d1|F18D1|18:1, all isomers|g|fattyAcid
fa18d1c|F18D1C|18:1, cis|g|fattyAcid
fa18d1t|F18D1T|18:1, trans|g|fattyAcid
fa18d1tn7|F18D1TN7|18:1 n-7, trans|g|fattyAcid||SR28
fa18d2|F18D2|18:2, all isomers|g|fattyAcid
fa18d2i|F18D2I|18:2, mixed isomers|g|fattyAcid||own
fa18d2t|F18D2T|18:2, trans, not further defined|g|fattyAcid||own
fa18d2tt|F18D2TT|18:2, trans, trans|g|fattyAcid||SR28
conjugatedLinoleicAcids|F18D2CLA|conjugated linoleic acids (18:2)|g|fattyAcid||SR28
fa18d3|F18D3|18:3, all isomers|g|fattyAcid
gammaLinolenicAcid|F18D3N6|gamma-linolenic acid (18:3 n-6)|g|fattyAcid
fa18d3i|F18D3I|18:3, mixed isomers|g|fattyAcid||own
fa18d4|F18D4|18:4|g|fattyAcid
fa20d1|F20D1|20:1|g|fattyAcid
fa20d2cn6|F20D2CN6|20:2 n-6|g|fattyAcid
fa20d3|F20D3|20:3, all isomers|g|fattyAcid
fa20d3n3|F20D3N3|20:3 n-3|g|fattyAcid
dihomoGammaLinolenicAcid|F20D3N6|dihomo-gamma-linolenic acid (20:3 n-6)|g|fattyAcid
fa20d4|F20D4|20:4, all isomers|g|fattyAcid
arachidonicAcid|F20D4N6|arachidonic acid (20:4 n-6)|g|fattyAcid
fa21d5|F21D5|21:5|g|fattyAcid||SR28
fa22d1|F22D1|22:1, all isomers|g|fattyAcid
fa22d1c|F22D1C|22:1, cis|g|fattyAcid||SR28
fa22d1t|F22D1T|22:1, trans|g|fattyAcid||SR28
fa22d4|F22D4|22:4|g|fattyAcid
fa24d1c|F24D1C|24:1, cis|g|fattyAcid
transMonounsaturatedFat|FATRNM|trans fat, monounsaturated|g|fattyAcid
transPolyunsaturatedFat|FATRNP|trans fat, polyunsaturated|g|fattyAcid
`;

// biome-ignore format: a list
export type DetailId =
  | "sucrose" | "glucose" | "fructose" | "galactose" | "lactose" | "maltose" | "vitaminD2" | "vitaminD3"
  | "betaTocopherol" | "gammaTocopherol" | "deltaTocopherol" | "alphaTocotrienol" | "betaTocotrienol"
  | "gammaTocotrienol" | "deltaTocotrienol" | "menaquinone4" | "dihydrophylloquinone" | "hydroxyproline"
  | "stigmasterol" | "campesterol" | "betaSitosterol" | "butyricAcid" | "caproicAcid" | "caprylicAcid"
  | "capricAcid" | "lauricAcid" | "tridecanoicAcid" | "myristicAcid" | "pentadecanoicAcid"
  | "palmiticAcid" | "margaricAcid" | "stearicAcid" | "arachidicAcid" | "behenicAcid" | "lignocericAcid"
  | "fa14d1" | "fa15d1" | "fa16d1" | "fa16d1c" | "fa16d1t" | "fa17d1" | "fa18d1" | "fa18d1c" | "fa18d1t"
  | "fa18d1tn7" | "fa18d2" | "fa18d2i" | "fa18d2t" | "fa18d2tt" | "conjugatedLinoleicAcids" | "fa18d3"
  | "gammaLinolenicAcid" | "fa18d3i" | "fa18d4" | "fa20d1" | "fa20d2cn6" | "fa20d3" | "fa20d3n3"
  | "dihomoGammaLinolenicAcid" | "fa20d4" | "arachidonicAcid" | "fa21d5" | "fa22d1" | "fa22d1c"
  | "fa22d1t" | "fa22d4" | "fa24d1c" | "transMonounsaturatedFat" | "transPolyunsaturatedFat";
