import { sheet } from "steelyard";
import { personCard } from "steelyard/card";
import { starterFoods } from "steelyard/foods";
import { portionPlan } from "steelyard/plan";

/** Breakfast for two, planned and handed out. */
export default (): string => {
  const porridge = sheet(
    {
      name: "Porridge",
      portions: 2,
      lines: [
        { food: "oats-rolled-dry", amount: "100 g" },
        { food: "milk-whole", amount: "300 ml" },
      ],
      method: ["Simmer for 10 min."],
    },
    starterFoods,
  );
  const plan = portionPlan({
    meals: [{ id: "breakfast", dishes: porridge }],
    people: [
      { id: "cox", person: { sex: "female", age: 24, mass: "50 kg" }, demands: { energy: "300 kcal" } },
      { id: "heavyweight", demands: { energy: "900 kcal" } },
    ],
  });
  const cards = plan.people.map(({ id }) => personCard(plan, id).includes("Porridge"));
  return `${plan.brings("cox", "breakfast", "energy").value} ${cards.join(" ")}`;
};
