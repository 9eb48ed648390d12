import { type Language, say } from "../document/language.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { type Exact, exact, fraction, isZero, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { PortionScore, ProteinQuality } from "../person/amino/quality.ts";
import { aminoPatterns } from "../person/amino/score.ts";
import { bounded } from "./comparisonCells.ts";
import { figureCell, legend } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { silentNotes, tallyFigure } from "./tallyFigure.ts";

/** Amino acids down, patterns across; scores below. */
export function qualityTables(q: ProteinQuality, language: Language): Table[] {
  const words = (text: string, gaps?: { readonly [gap: string]: string }): string =>
    say(language, text, gaps);
  const isHeld = q.aminoAcids.some(({ requirement }) => requirement !== undefined);
  const rows = q.aminoAcids.map(({ of, mgPerGram, requirement }): Row => {
    const ratios = q.scores.map(({ pattern }): Cell => {
      if (!mgPerGram) return figureCell(null, { language });
      return tallyFigure(mgPerGram.times(100).over(aminoPatterns[pattern].mgPerGram[of]), {
        places: 0,
        language,
      });
    });
    const percent = requirement && times(requirement.share, fraction(100n));
    // Of a middle figure the ends are not told here, and the middle alone would pass for exact.
    const share = bounded(percent, requirement?.bound ?? "unknown", { places: 0, language });
    const content = mgPerGram ? tallyFigure(mgPerGram, { language }) : figureCell(null, { language });
    return { kind: "body", cells: [words(of), content, ...ratios, ...(isHeld ? [share] : [])] };
  });
  const scores: Row = {
    kind: "total",
    cells: [
      words("score"),
      "",
      ...q.scores.map((score) => scoreText(score, language)),
      ...(isHeld ? [""] : []),
    ],
  };
  return [
    table({
      title: words("{name}: quality of the protein", { name: q.name }),
      columns: [
        { key: "amino", heading: words("Amino acid") },
        { key: "content", heading: words("In 1 g of protein"), unit: words("mg"), align: "end" },
        ...q.scores.map(({ pattern, name }) => ({
          key: pattern,
          heading: words(name),
          unit: "%",
          align: "end" as const,
        })),
        ...(isHeld
          ? [
              {
                key: "requirement",
                heading: words("Mean requirement of a day"),
                unit: "%",
                align: "end" as const,
              },
            ]
          : []),
      ],
      rows: [...rows, scores],
      notes: [
        ...q.scores.flatMap((score) => limitingNote(score, language)),
        words("{share} of the protein comes from lines that tell all their amino acids", {
          share: showPercent(q.told, { language }),
        }),
        ...(q.note === undefined ? [] : [words(q.note)]),
        ...legend(rows, language),
        ...silentNotes(
          q.aminoAcids.map(({ of, amount }) => [of, amount]),
          language,
        ),
      ],
    }),
  ];
}

/** One figure where all is known, both ends where it is not. */
function scoreText({ least: exactLeast, most: exactMost }: PortionScore, language: Language): string {
  const percent = (f: Exact, rounding: "down" | "up" | "nearest"): string =>
    showFigure(times(f, fraction(100n)), { places: 0, rounding, language });
  if (exactMost && compareRatios(exactLeast, exactMost) === 0) return percent(exactLeast, "nearest");
  const low = percent(exactLeast, "down");
  if (exactMost === undefined) {
    return isZero(exactLeast) ? say(language, "?") : say(language, "at least {figure}", { figure: low });
  }
  const high = percent(exactMost, "up");
  return isZero(exactLeast)
    ? say(language, "at most {figure}", { figure: high })
    : say(language, "{low} to {high}", { low, high });
}

function limitingNote({ name, limiting, proven, corrected }: PortionScore, language: Language): string[] {
  if (limiting === undefined) return [];
  const gaps = { pattern: say(language, name), limiting: say(language, limiting) };
  const said = say(
    language,
    proven ? "{pattern}: limiting: {limiting}" : "{pattern}: lowest so far as is known: {limiting}",
    gaps,
  );
  if (!corrected?.most?.eq(corrected.least)) return [said];
  const figure = showFigure(exact(corrected.least), { places: 2, language });
  return [`${said}; ${say(language, "{figure} with the digestibility given", { figure })}`];
}
