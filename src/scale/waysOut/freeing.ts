import { type Exact, ONE, over, times } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { linesByName, writtenGrams } from "../engine/constraints.ts";
import { BASE, type LineAt, type Model, proportionsAt } from "../engine/model.ts";
import { type LeastDeparture, meet, type Task, taskProblem, totalDeparture } from "../engine/task.ts";
import { gramsText } from "../fit/words.ts";
import { adjustable, type FitSuggestion } from "./suggestion.ts";

/**
 * Held lines that would do if they were adjustable: each alone within the usual range, or else
 * with a bound of its own; where none does, the few that are needed together.
 */
export function freeing(task: Task, held: readonly NamedLine[]): FitSuggestion[] {
  const alone = held.flatMap((line) => {
    const usual = freed(task, [line], "usual");
    if (usual) return [{ turn: 0, total: totalDeparture(usual), made: adjustable([line.name], usual) }];
    const any = freed(task, [line], "any");
    const made = any && bounded(any, line);
    return made ? [{ turn: 1, total: totalDeparture(any), made }] : [];
  });
  if (alone.length > 0) {
    alone.sort((a, b) => a.turn - b.turn || compareRatios(a.total, b.total));
    return alone.map(({ made }) => made);
  }
  const all = freed(task, held, "usual");
  if (!all) return [];
  const proportions = proportionsAt(all.problem.model, all.point);
  const moved = new Set(
    all.problem.model.movers.filter((_, j) => !isOne(proportions[j])).map(({ name }) => name),
  );
  const few = held.filter(({ name }) => moved.has(name));
  const found = few.length > 0 ? freed(task, few, "usual") : undefined;
  return found
    ? [
        adjustable(
          few.map(({ name }) => name),
          found,
        ),
      ]
    : [];
}

export type NamedLine = LineAt & { readonly name: string };

function freed(task: Task, lines: readonly LineAt[], within: "usual" | "any"): LeastDeparture | undefined {
  const found = meet(taskProblem(task, { lines, within }), task.pivots);
  return "point" in found ? found : undefined;
}

/** A freed line with the bound that it would need; nothing where it would have to vanish. */
function bounded(found: LeastDeparture, line: NamedLine): FitSuggestion | undefined {
  const { model } = found.problem;
  const place = model.places[line.dish]?.[line.line] ?? BASE;
  const ratio = found.point.ratios[place];
  if (!ratio || ratio.n === 0n) return undefined;
  const side = compareRatios(proportionsAt(model, found.point)[place] ?? ONE, ONE) > 0 ? "most" : "least";
  const grams = over(times(ratio, writtenGrams(model, line)), found.point.u);
  const shown = gramsText(grams, side === "most" ? "up" : "down");
  return {
    ...adjustable([line.name], found),
    end: side,
    to: grams,
    text: `make ${line.name} adjustable, ${side === "most" ? "up" : "down"} to ${shown} a portion`,
  };
}

/**
 * Lines that are held now, of some mass, whose ratio a fit may not move alone. The last held line
 * stays, for ratios to be taken to.
 */
export function heldLines({ dishes, movers, places }: Model): NamedLine[] {
  const held = linesByName({ dishes }).filter((at) => {
    const place = places[at.dish]?.[at.line] ?? BASE;
    const isHeld = dishes[at.dish]?.sheet.plan.lines[at.line]?.line.scaling === "held";
    const isAlone = movers[place]?.kind === "line";
    return isHeld && !isAlone && writtenGrams({ dishes }, at).n !== 0n;
  });
  return held.length > 1 ? held : [];
}

function isOne(ratio: Exact | undefined): boolean {
  return ratio === undefined || ratio.n === ratio.d;
}
