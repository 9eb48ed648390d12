import { fit, foodTable, roundToKitchen, sheet } from "steelyard";

/** The core with a fit, rounded to what a kitchen can measure. */
export default (): string => {
  const foods = foodTable([
    { id: "oats", name: "Oats", source: "own", per100g: { energy: 379, protein: 13 } },
    { id: "milk", name: "Milk", source: "own", per100g: { energy: 64, protein: 3 } },
  ]);
  const porridge = sheet(
    {
      name: "Porridge",
      portions: 1,
      lines: [
        { food: "oats", amount: "100 g" },
        { food: "milk", amount: "200 g", scaling: "adjustable" },
      ],
    },
    foods,
  );
  const fitted = fit(porridge, [{ of: "energy", exactly: "600 kcal" }]);
  if (fitted.status !== "met") return fitted.status;
  const rounded = roundToKitchen(fitted.sheet, "metric");
  return rounded.status === "out-of-reach" ? rounded.status : String(rounded.sheet.lines.length);
};
