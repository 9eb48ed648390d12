import { say } from "../document/language.ts";
import { showFigure } from "../measure/showFigure.ts";
import { fault, kindOf } from "../number/error.ts";
import { Plan } from "../plan/planned.ts";
import { type DrawingOptions, drawing, drawingHow, label, place, rule } from "./drawing.ts";

const NAME = 120;
const SPAN = 360;
const ROW = 26;

/** What the drawing of multiples can be told. */
export type MultiplePictureOptions = Omit<DrawingOptions, "components">;

/**
 * Draws by what each person's portion of a meal is a multiple of the recipe's, on one axis on which a half lies as
 * far to the left of the recipe as its double lies to the right. One SVG element in the ink of the text around it,
 * with all that it shows in words.
 *
 * Throws `card-malformed`, and `plan-malformed` for a meal that the plan lacks.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] }, starterFoods);
 * const plan = portionPlan({
 *   meals: [{ id: "breakfast", dishes: oats }],
 *   people: [{ id: "cox", name: "Cox", demands: { factor: 2 } }],
 * });
 * console.log(multiplePicture(plan, "breakfast").includes("Cox 2 times.")); // => true
 * ```
 */
export function multiplePicture(plan: Plan, meal: string, how: MultiplePictureOptions = {}): string {
  if (!(plan instanceof Plan)) {
    const hint = "make one with portionPlan({ … })";
    throw fault("card-malformed", `expected a plan, got ${kindOf(plan)}`, hint, ["plan"]);
  }
  const { id, language } = drawingHow(how);
  const portions = plan.people
    .map(({ id: person, name }) => ({ name, portion: plan.portion(person, meal) }))
    .filter(({ portion }) => portion.dishes.size > 0);
  const rows = portions.map(({ name, portion: { factor } }) => ({
    name,
    shown: showFigure(factor, { significant: 2, language }),
    doublings: factor.n > 0n ? Math.log2(factor.toNumber()) : 0,
  }));
  const reach = Math.max(1, ...rows.map(({ doublings }) => Math.ceil(Math.abs(doublings))));
  const at = (doublings: number): number => NAME + (SPAN / 2) * (1 + doublings / reach);
  const foot = ROW * rows.length + 8;
  const ticks = Array.from({ length: 2 * reach + 1 }, (_, i) => i - reach);
  const body = [
    ...ticks.map((t) => rule(at(t), 0, at(t), foot, t !== 0)),
    ...ticks.map((t) => label(t < 0 ? `1/${2 ** -t} ×` : `${2 ** t} ×`, at(t), foot + 16, "middle")),
    ...rows.flatMap(({ name, shown, doublings }, i) => {
      const y = ROW * i + 8;
      const [from, to] = [Math.min(at(0), at(doublings)), Math.max(at(0), at(doublings))];
      return [
        label(name, 0, y + 14),
        `<rect x="${place(from)}" y="${y + 2}" width="${place(Math.max(2, to - from))}" height="14" fill="url(#${id}-lines)" stroke="currentColor"/>`,
        label(`${shown} ×`, NAME + SPAN + 50, y + 14),
      ];
    }),
  ];
  const name = plan.meals.find((each) => each.id === meal)?.name ?? meal;
  const title = say(language, "{meal}: portions as multiples of the recipe's", { meal: name });
  const words = rows.map((row) =>
    say(language, "{name} {factor} times.", { name: row.name, factor: row.shown }),
  );
  return drawing(
    { id, title, words: words.join(" ") },
    { width: NAME + SPAN + 110, height: foot + 24 },
    body,
  );
}
