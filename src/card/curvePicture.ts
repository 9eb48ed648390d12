import { say } from "../document/language.ts";
import { components } from "../food/components.ts";
import { fault, kindOf } from "../number/error.ts";
import { Sweep } from "../scale/sweep.ts";
import { legend } from "../show/figure.ts";
import type { TableFigure } from "../show/table.ts";
import { tallyFigure } from "../show/tallyFigure.ts";
import { type DrawingOptions, drawing, drawingHow, label, place, rule } from "./drawing.ts";

const LEFT = 20;
const SPAN = 460;
const PANEL = 120;

/**
 * Draws what a slider moves: along one axis of a sweep, how each component of a portion follows, energy and protein
 * unless told otherwise. Points that cannot be reached are gaps; where not all is known the curve is dashed. One SVG
 * element in the ink of the text around it, with all that it shows in words.
 *
 * Throws `card-malformed` for what is no sweep over one axis of figures, `component-unknown`.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] }, starterFoods);
 * const slid = sweep(oats, [{ target: "energy", values: [379, 758] }]);
 * console.log(curvePicture(slid, { components: ["protein"] }).includes("protein: from 13.2 g at 379 to 26.3 g at 758.")); // => true
 * ```
 */
export function curvePicture(slid: Sweep, how: DrawingOptions = {}): string {
  if (!(slid instanceof Sweep)) {
    const hint = "make one with sweep(sheet, […])";
    throw fault("card-malformed", `expected a sweep, got ${kindOf(slid)}`, hint, ["sweep"]);
  }
  const { components: ids, id, language } = drawingHow(how);
  const stops = slid.points.flatMap(({ at, sheet }, i) => {
    const [own, ...others] = slid.places[i] ?? [];
    if (own === undefined || typeof own === "string" || others.length > 0) return [];
    return [{ x: own.toNumber(), shown: Object.values(at).join(", "), sheet }];
  });
  const [first, last] = [stops[0], stops.at(-1)];
  if (!first || !last || stops.length < slid.points.length) {
    const hint = "sweep one axis, over figures of one unit";
    throw fault("card-malformed", "a curve needs one axis of figures", hint, ["sweep"]);
  }
  const [low, high] = [Math.min(...stops.map(({ x }) => x)), Math.max(...stops.map(({ x }) => x))];
  const across = (x: number): number => LEFT + (high === low ? SPAN / 2 : (SPAN * (x - low)) / (high - low));
  const body: string[] = [];
  const words: string[] = [];
  const marks: TableFigure[][] = [];
  ids.forEach((of, panel) => {
    const name = say(language, components[of].name);
    const unit = say(language, components[of].unit);
    const top = panel * (PANEL + 40) + 24;
    const points = stops.map(({ x, shown, sheet }) => {
      const tally = sheet?.portion(of);
      const cell = tally && tallyFigure(tally, { unit, language });
      if (cell) marks.push([cell]);
      const figure = cell?.text;
      return {
        x: across(x),
        shown,
        value: tally?.value.toNumber(),
        figure,
        isOpen: tally?.bound !== "point",
      };
    });
    const most = Math.max(...points.map(({ value = 0 }) => value), 1e-9);
    const down = (value: number): number => top + PANEL - ((PANEL - 20) * value) / most;
    body.push(label(name, LEFT, top - 6), rule(LEFT, top + PANEL, LEFT + SPAN, top + PANEL));
    points.forEach(({ x, value, isOpen }, i) => {
      if (value === undefined) return;
      const before = points[i - 1];
      body.push(`<circle cx="${place(x)}" cy="${place(down(value))}" r="3"/>`);
      if (before?.value !== undefined)
        body.push(rule(before.x, down(before.value), x, down(value), isOpen || before.isOpen));
    });
    const reached = points.filter(({ figure }) => figure !== undefined);
    const [from, to] = [reached[0], reached.at(-1)];
    if (from && to) {
      body.push(
        `<g font-size="11">${label(from.figure ?? "", from.x, down(from.value ?? 0) - 8)}${label(to.figure ?? "", to.x, down(to.value ?? 0) - 8, "end")}</g>`,
      );
      words.push(
        say(language, "{component}: from {least} at {start} to {most} at {end}.", {
          component: name,
          least: from.figure ?? "",
          start: from.shown,
          most: to.figure ?? "",
          end: to.shown,
        }),
      );
    }
    body.push(
      label(first.shown, LEFT, top + PANEL + 15),
      label(last.shown, LEFT + SPAN, top + PANEL + 15, "end"),
    );
    const missed = points.length - reached.length;
    if (missed > 0)
      words.push(say(language, "{count} of them cannot be reached.", { count: String(missed) }));
  });
  const title = say(language, "{name}: what follows {axis}", { name: slid.name, axis: slid.axes.join(", ") });
  const size = { width: LEFT * 2 + SPAN, height: ids.length * (PANEL + 40) + 8 };
  return drawing({ id, title, words: [...words, ...legend(marks, language)].join(" ") }, size, body);
}
