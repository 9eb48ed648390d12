import type { ComponentId } from "../components.ts";

/**
 * 21 CFR 101.9(c)(8)(iv) and (c)(9), Reference Daily Intakes and Daily Reference Values for adults and
 * children of four years and more, at 2,000 kcal (81 FR 33742, 27 May 2016), each in its component's
 * own unit and to the digits of the regulation. Vitamins and minerals from
 * A to zinc were read in the FDA's answer to industry that lists them, the others of them and fibre in a consumer
 * organisation's list, fat and sodium as the FDA's change of 2016 is told, added sugars in its proposal; saturated
 * fat, cholesterol and protein only as the FDA printed them before 2016, total carbohydrate nowhere. Potassium stands at 4,700 mg although the intake that it rested on was lowered in 2019. There is none
 * for total sugars or trans fat.
 */
export const usDailyValues: { readonly [C in ComponentId]?: string } = {
  fat: "78",
  saturatedFat: "20",
  cholesterol: "300",
  carbohydrateByDifference: "275",
  sodium: "2300",
  fibre: "28",
  protein: "50",
  addedSugars: "50",
  vitaminARae: "900",
  vitaminC: "90",
  calcium: "1300",
  iron: "18",
  vitaminD: "20",
  vitaminE: "15",
  vitaminK: "120",
  thiamin: "1.2",
  riboflavin: "1.3",
  niacinEquivalents: "16",
  vitaminB6: "1.7",
  folateDfe: "400",
  vitaminB12: "2.4",
  biotin: "30",
  pantothenicAcid: "5",
  phosphorus: "1250",
  iodine: "150",
  magnesium: "420",
  zinc: "11",
  selenium: "55",
  copper: "0.9",
  manganese: "2.3",
  chromium: "35",
  molybdenum: "45",
  chloride: "2300",
  potassium: "4700",
  choline: "550",
};
