import { foodTable, scale, sheet } from "steelyard";

/** The core: a sheet over a table of one's own, scaled. */
export default (): string => {
  const foods = foodTable([{ id: "oats", name: "Oats", source: "own", per100g: { energy: 379 } }]);
  const porridge = sheet(
    { name: "Porridge", portions: 1, lines: [{ food: "oats", amount: "100 g" }] },
    foods,
  );
  return scale(porridge, { energy: "758 kcal" }).factor.toString();
};
