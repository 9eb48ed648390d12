/**
 * Kitchen measures of Sweden and Norway by their own abbreviations, in millilitres: the spice measure
 * (kryddmått), teaspoon (tesked), tablespoon (matsked) and coffee cup (kaffekopp).
 *
 * Source: Store norske leksikon, "målenheter for matlaging", table of volumes: 1, 5, 15 and 150 ml
 * (read in a copy). The Swedish abbreviations of the two spoons: common practice, no source.
 */
export const nordicMeasures = { krm: "1", tsk: "5", msk: "15", kkp: "150" } as const;
