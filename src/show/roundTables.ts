import { britishEnglish, type Language, say } from "../document/language.ts";
import { type Amount, sameAmount } from "../measure/amount.ts";
import { showPercent } from "../measure/showFigure.ts";
import type { Exact } from "../number/exact.ts";
import type { KeptReason } from "../scale/round/candidates.ts";
import type { RoundedDemand, RoundedLine } from "../scale/round/report.ts";
import type { Measured, RoundingOutOfReach } from "../scale/round/result.ts";
import { measuresNote, shownAmount, stated } from "../sheet/stated.ts";
import { figureCell } from "./figure.ts";
import { outcomeCell } from "./fitTables.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";

/** What to measure, then what that does to the demands. */
export function roundedTables(r: Measured, language: Language = britishEnglish): Table[] {
  return [amountsTable(r, language), ...(r.demands.length > 0 ? [demandsTable(r, language)] : [])];
}

const TITLES: { readonly [S in Measured["status"]]: string } = {
  met: "Amounts to measure",
  nearest: "Amounts to measure, the nearest to what was asked",
  stopped: "Amounts to measure, the best that was found",
};

const KEPT: { readonly [K in KeptReason]: string } = {
  "per-portion": "the same for everyone",
  nothing: "nothing of it",
  "as-written": "as written",
  "not-measurable": "cannot be measured here",
  "out-of-bounds": "nothing measurable within its bounds",
};

function amountsTable(r: Measured, language: Language): Table {
  const text = (a: Amount): string => shownAmount(a, r.measures(), language);
  const row = (line: RoundedLine, name: string): Cell[] => [
    name,
    text(line.after),
    sameAmount(line.before, line.after) ? "" : text(line.before),
    line.kept === undefined ? movedText(line.moved, language) : keptText(line, line.kept, language),
  ];
  const rows: (Row | Cell[])[] = [];
  let at = 0;
  for (const [d, s] of r.measured().entries()) {
    const name = r.names()[d];
    if (name !== undefined) rows.push({ kind: "group", heading: name });
    for (const line of s.lines) {
      const own = r.lines[at++] as RoundedLine;
      rows.push(row(own, stated(line.name, line.state, language)));
    }
  }
  const amounts = r.lines.flatMap(({ before, after }) => [before, after]);
  return table({
    title: say(language, TITLES[r.status]),
    columns: [
      { key: "line", heading: say(language, "Line") },
      { key: "measure", heading: say(language, "Measure"), align: "end" },
      { key: "exact", heading: say(language, "Exactly"), align: "end" },
      { key: "moved", heading: say(language, "Moved") },
    ],
    rows,
    notes: [
      ...measuresNote(amounts, language),
      driftNote(r, language),
      ...proofNotes(r, language),
      ...r.notes.map((note) => note.text),
    ],
  });
}

function keptText({ measurable }: RoundedLine, kept: KeptReason, language: Language): string {
  const why = say(language, KEPT[kept]);
  if (measurable || kept === "not-measurable" || kept === "nothing") return why;
  return `${why}; ${say(language, KEPT["not-measurable"])}`;
}

function driftNote({ drift, lineByLine }: Measured, language: Language): string {
  const each = { drift: share(drift.ratios, language), other: share(lineByLine.ratios, language) };
  const text = "ratios change by {drift} in all; rounding each line for itself, by {other}";
  return say(language, lineByLine.limitsHold ? text : `${text}, past a limit`, each);
}

const LOST = "{demand}: off by more than its tolerance";
const MISSED = "{demand}: missed before rounding, and still";

/** How far from proven. */
function proofNotes({ bound, nodes }: Measured, language: Language): string[] {
  if (!bound) return [];
  const least = share(bound.ratios, language);
  const text =
    "not proven to be the best: the search stopped at {nodes} choices; none changes ratios by less than {least}";
  return [say(language, text, { nodes: String(nodes), least })];
}

function movedText(moved: Exact, language: Language): string {
  return moved.n === 0n ? "" : `${moved.n > 0n ? "+" : ""}${share(moved, language)}`;
}

function share(f: Exact, language: Language): string {
  return showPercent(f, { significant: 2, language });
}

function demandsTable(r: Measured, language: Language): Table {
  return table({
    title: say(language, "What a portion brings, as eaten"),
    columns: [
      { key: "demand", heading: say(language, "Demand") },
      { key: "before", heading: say(language, "Before"), align: "end" },
      { key: "measured", heading: say(language, "Measured"), align: "end" },
      { key: "off", heading: say(language, "Off by"), align: "end" },
      { key: "lineByLine", heading: say(language, "Line by line"), align: "end" },
    ],
    rows: r.demands.map((d) => [
      d.asked,
      cell(d, d.before),
      cell(d, d.brings),
      d.miss.n === 0n ? "" : cell({ ...d, bound: "point" }, d.miss),
      cell(d, d.lineByLine),
    ]),
    notes: [
      ...r.demands
        .filter(({ holds }) => !holds)
        .map(({ asked, heldBefore }) => say(language, heldBefore ? LOST : MISSED, { demand: asked })),
      ...r.notProven.map(({ text }) => text),
    ],
  });
}

function cell({ unit, demand, bound }: RoundedDemand, value: Exact | null): Cell {
  return value ? outcomeCell(value, unit, demand.energyShareOf !== undefined, bound) : figureCell(null);
}

/** Which limits, and how near they can be kept. */
export function roundOutOfReachTables(r: RoundingOutOfReach, language: Language = britishEnglish): Table[] {
  return [
    table({
      title: say(language, "Out of reach: limits that no measurable amounts keep"),
      columns: [
        { key: "limit", heading: say(language, "Limit") },
        { key: "before", heading: say(language, "Before"), align: "end" },
        { key: "nearest", heading: say(language, "Nearest"), align: "end" },
      ],
      rows: r.limits.map((d) => [d.asked, cell(d, d.before), cell(d, d.brings)]),
      notes: [
        r.text,
        say(language, "a finer scale, more amounts on each side, or a line measured otherwise may open it"),
      ],
    }),
  ];
}
