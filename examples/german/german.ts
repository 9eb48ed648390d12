import type { Language } from "steelyard";
import { components } from "./components.ts";
import { foods } from "./foods.ts";
import { measures } from "./measures.ts";
import { notes } from "./notes.ts";

/** German as a dietitian writes it: decimal comma, spoons as EL and TL, temperatures as written. */
export const german: Language = {
  tag: "de-DE",
  decimal: ",",
  group: ".",
  phrases: { ...foods, ...components, ...notes },
  words: {
    units: {
      ...measures,
      µg: "µg",
      mg: "mg",
      g: "g",
      kg: "kg",
      oz: { one: "Unze", other: "Unzen" },
      lb: { one: "Pfund (lb)", other: "Pfund (lb)" },
      st: "Stone",
      ml: "ml",
      cl: "cl",
      dl: "dl",
      l: "l",
      in3: "Kubikzoll",
      ft3: "Kubikfuß",
      krm: "Krydmått",
      tsk: "Tesked",
      msk: "Matsked",
      kkp: "Kaffekopp",
      mm: "mm",
      cm: "cm",
      m: "m",
      in: "Zoll",
      ft: "Fuß",
      J: "J",
      kJ: "kJ",
      MJ: "MJ",
      kcal: "kcal",
      tsp: "TL",
      dessertspoon: "Dessertlöffel",
      tbsp: "EL",
      "fl oz": { one: "Flüssigunze", other: "Flüssigunzen" },
      gill: { one: "Gill", other: "Gills" },
      cup: { one: "Tasse", other: "Tassen" },
      pint: { one: "Pint", other: "Pints" },
      quart: { one: "Quart", other: "Quarts" },
      gallon: { one: "Gallone", other: "Gallonen" },
    },
    sets: {
      metric: "metr.",
      us: "US",
      "us-label": "US-Etikett",
      imperial: "imp.",
      australian: "austral.",
    },
    // A half and less is one: 1/2 Tasse; all else is many: 1,5 Tassen.
    category: (figure) => (figure.gt(1) ? "other" : "one"),
  },
};
