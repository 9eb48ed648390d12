import { showFigure, showPercent } from "../measure/showFigure.ts";
import { exactText } from "../number/digits.ts";
import type { Exact } from "../number/exact.ts";
import type { FitFactor, FitOutcome } from "../scale/fit/answer.ts";
import { proportionText } from "../scale/fit/conflict.ts";
import type { Met } from "../scale/fit/met.ts";
import type { Missed } from "../scale/fit/missed.ts";
import { boundText, departureText, pointsText } from "../scale/fit/words.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Bound } from "../sheet/tally.ts";
import { figureCell } from "./figure.ts";
import { linesTable } from "./sheetTables.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";

/** What was asked and brought, what moved, and the amounts. */
export function metTables(met: Met): Table[] {
  const notes = [
    ...met.binding
      .filter(({ price }) => price.n !== 0n)
      .slice(0, SHOWN)
      .map(({ text }) => text),
    ...met.notProven.map(({ text }) => text),
    ...met.notes.map(({ text }) => text),
  ];
  return [
    outcomesTable("Fitted: every demand is met", met.outcomes, notes),
    factorsTable(met.factor, met.factors),
    ...amounts(met.fitted()),
  ];
}

/** Why not, what would help, and the nearest that can be had. */
export function outOfReachTables(missed: Missed): Table[] {
  const near =
    missed.factor === undefined
      ? []
      : [
          outcomesTable(
            "The nearest that can be had",
            missed.outcomes,
            missed.notes.map(({ text }) => text),
          ),
          factorsTable(missed.factor, missed.factors),
          ...amounts(missed.nearestSheets()),
        ];
  return [whyTable(missed), ...near];
}

/** How many of a kind are shown; the result has them all. */
const SHOWN = 8;

function whyTable(missed: Missed): Table {
  const isTogether = missed.suggestions.some(({ also }) => also.length > 0);
  const heading = isTogether
    ? "No single change would open it; together, any one of these would"
    : "Ways to make it possible: any one of these";
  const rows = [
    ...group("What cannot stand together", missed.conflict),
    ...group("What each demand alone would give", missed.alone),
    ...group(heading, missed.suggestions),
  ];
  const { untried } = missed;
  const tried =
    untried > 0
      ? "none of the changes that were tried would open it"
      : "no single change would open it, nor any two that were tried";
  const none = missed.suggestions.length === 0 ? [tried] : [];
  const left = untried > 0 ? [`${untried} more change${untried === 1 ? " was" : "s were"} not tried`] : [];
  return table({
    title: "Out of reach: not every demand can be met",
    columns: [{ key: "text", heading: "Why" }],
    rows,
    notes: [...none, ...left, ...missed.notProven.map(({ text }) => text)],
  });
}

function group(heading: string, all: readonly { readonly text: string }[]): (Row | string[])[] {
  if (all.length === 0) return [];
  const more = all.length > SHOWN ? [[`and ${all.length - SHOWN} more`]] : [];
  return [{ kind: "group", heading }, ...all.slice(0, SHOWN).map(({ text }) => [text]), ...more];
}

function outcomesTable(title: string, outcomes: readonly FitOutcome[], notes: readonly string[]): Table {
  return table({
    title,
    columns: [
      { key: "demand", heading: "One portion" },
      { key: "brings", heading: "Brings", align: "end" },
      { key: "miss", heading: "Off by", align: "end" },
    ],
    rows: outcomes.map(({ asked, demand, brings, unit, bound, miss }) => {
      const isShare = demand.energyShareOf !== undefined;
      return [
        asked,
        brings ? outcomeCell(brings, unit, isShare, bound) : figureCell(null),
        miss.n === 0n ? "" : missCell(miss, unit, isShare),
      ];
    }),
    notes: [...new Set(notes)],
  });
}

function missCell(miss: Exact, unit: string, isShare: boolean): Cell {
  const cell = outcomeCell(miss, unit, isShare, "point");
  return isShare && typeof cell !== "string" ? { ...cell, text: pointsText(miss) } : cell;
}

/** A share is shown in per cent; a quotient of which not all is known is no figure to reckon with. */
export function outcomeCell(value: Exact, unit: string, isShare: boolean, bound: Bound): Cell {
  const plain = isShare ? showPercent(value, { significant: 3 }) : undefined;
  if (bound === "unknown") return boundText(plain ?? showFigure(value, { unit }), bound);
  if (bound === "between") {
    const text = boundText(plain ?? showFigure(value, { unit }), bound);
    return { text, value: exactText(value), tone: "between" };
  }
  const tone = bound === "point" ? "known" : bound;
  const cell = figureCell(value, { tone, ...(unit !== "" && { unit }) });
  return plain === undefined ? cell : { ...cell, text: boundText(plain, bound) };
}

function factorsTable(common: Exact, factors: readonly FitFactor[]): Table {
  return table({
    title: "Factors",
    columns: [
      { key: "of", heading: "Of" },
      { key: "factor", heading: "Factor", align: "end" },
      { key: "ratio", heading: "Against the dish's factor" },
    ],
    rows: [
      ["the dish", figureCell(common), ""],
      ...factors.map(({ kind, name, factor, ratio, kept }) => [
        kind === "line" ? name : `the ${name} ${kind}`,
        figureCell(factor),
        kept
          ? "kept as written: not all is known of it"
          : kind === "sheet"
            ? proportionText({ kind: "dish" }, ratio)
            : departureText(ratio),
      ]),
    ],
  });
}

function amounts(sheets: readonly Sheet[]): Table[] {
  return sheets.map((s) => linesTable(s));
}
