import type { ComponentId } from "../../food/components.ts";
import { exact } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Facts } from "../person.ts";
import * as eu from "./euReferences.ts";
import { euFluoride, euManganese, euUpper } from "./euUpper.ts";
import * as nordic from "./nordic.ts";
import {
  type IntakeSetting,
  type ReadTable,
  type ReferenceFigure,
  resolveRow,
  type UpperFigure,
} from "./resolve.ts";
import { heeds, readStage } from "./stage.ts";
import type { Authority, Covers, IntakeRow, IntakeTable } from "./table.ts";
import { mothersCaffeine, tolerable } from "./tolerable.ts";
import { ukFibre, ukReferences, ukSalt } from "./ukReferences.ts";
import { ukCaffeine, ukManganese, ukUpper, ukVitaminD } from "./ukUpper.ts";
import { usElements } from "./usElements.ts";
import { usGuidelines, usMacronutrients } from "./usMacronutrients.ts";
import { usCaffeine, usUpper } from "./usUpper.ts";
import { usVitamins } from "./usVitamins.ts";
import * as who from "./who.ts";

/** The published tables of an authority, all of them. */
export const intakeTables: { readonly [A in Authority]: readonly IntakeTable[] } = {
  uk: [ukReferences, ukFibre, ukSalt, ukUpper, ukManganese, ukVitaminD, ukCaffeine, tolerable],
  us: [usVitamins, usElements, usMacronutrients, usGuidelines, usUpper, usCaffeine, tolerable],
  eu: [
    eu.euReferences,
    eu.euProtein,
    eu.euProteinOfChildren,
    eu.euOtherBands,
    eu.euIronOfChildren,
    eu.euLongOmega3,
    eu.euWater,
    eu.euZinc,
    euUpper,
    euFluoride,
    euManganese,
    tolerable,
  ],
  nordic: [
    nordic.nordicReferences,
    nordic.nordicMagnesium,
    nordic.nordicVitaminD,
    mothersCaffeine,
    tolerable,
  ],
  who: [
    who.whoVitamins,
    who.whoMinerals,
    who.whoIron,
    who.whoIodine,
    who.whoGoals,
    mothersCaffeine,
    tolerable,
  ],
};

/** What an authority's tables hold for someone. */
export interface HeldFigures {
  readonly references: readonly ReferenceFigure[];
  readonly uppers: readonly UpperFigure[];
  /** Components whose figure wants the day's energy, and none is known. */
  readonly needEnergy: ReadonlySet<ComponentId>;
  /** The components of every level that counts food, for people of whatever age; those of mothers alone left out. */
  readonly limited: readonly ComponentId[];
}

/** Reads every table of an authority for someone, or what they say of one component. */
export function figuresFor(
  authority: Authority,
  facts: Facts,
  setting: IntakeSetting,
  only?: ComponentId,
): HeldFigures {
  const references: ReferenceFigure[] = [];
  const uppers: UpperFigure[] = [];
  const needEnergy = new Set<ComponentId>();
  const tables = intakeTables[authority].map((table) => rowsOf(table, only));
  const heeded = new Set(
    tables.flatMap(({ stages, references: rows }) =>
      rows.filter((row) => heeds(stages, row, facts)).map(({ of }) => of[0]),
    ),
  );
  for (const table of tables) {
    for (const row of table.references) {
      const figure = resolveRow(table, row, facts, setting, { isHeeded: heeded.has(row.of[0]) });
      if (figure === "energy") needEnergy.add(row.of[0]);
      else if (figure) references.push({ ...figure, kind: row.kind });
    }
    for (const row of table.uppers) {
      const figure = resolveRow(table, row, facts, setting, { isUpper: true });
      if (figure && figure !== "energy") uppers.push({ ...figure, kind: row.kind, covers: row.covers });
    }
  }
  return {
    references: references.map((figure) => withinLevel(figure, uppers)),
    uppers,
    needEnergy,
    limited: tables.flatMap((table) =>
      table.uppers.filter((row) => isOfFood(row) && !isOfMothers(table, row)).map(({ of }) => of[0]),
    ),
  };
}

function isOfMothers({ stages }: ReadTable, { values }: IntakeRow): boolean {
  return values.split(" ").every((text, at) => text === "-" || /[PL]/.test(stages[at]?.letter ?? ""));
}

interface Rows extends ReadTable, Required<Pick<IntakeTable, "references" | "uppers">> {}

function rowsOf(
  { source, stages, mothers, references = [], uppers = [] }: IntakeTable,
  only?: ComponentId,
): Rows {
  const isWanted = ({ of }: { readonly of: readonly ComponentId[] }): boolean =>
    only === undefined || of.includes(only);
  return {
    source,
    stages: stages.map(readStage),
    ...(mothers && { mothers }),
    references: references.filter(isWanted),
    uppers: uppers.filter(isWanted),
  };
}

/**
 * A reference that grows with the body or its energy, held to the level that the same authority sets for
 * all sources: one opinion knows nothing of the other, and nobody is to be told to pass a level.
 */
function withinLevel(figure: ReferenceFigure, uppers: readonly UpperFigure[]): ReferenceFigure {
  const [level] = uppers
    .filter(({ of, covers }) => of.join(" ") === figure.of.join(" ") && covers === "all sources")
    .sort((a, b) => compareRatios(exact(a.value), exact(b.value)));
  if (!figure.per || !level || compareRatios(exact(figure.value), exact(level.value)) <= 0) return figure;
  const held = `${figure.value} ${figure.unit} by this body, held to the ${level.kind} (${level.source})`;
  return { ...figure, value: level.value, note: figure.note ? `${figure.note}; ${held}` : held };
}

/**
 * Tells whether a level is an acceptable intake, of the mean of a life: of copper it stands beside an upper level, which
 * goes before it for a portion or a dose.
 */
export function isAcceptable({ kind }: Pick<UpperFigure, "kind">): boolean {
  return kind === "ADI";
}

/** Tells whether a level counts what food brings, by what it covers. */
export function isOfFood({ covers }: { readonly covers: Covers }): boolean {
  return !covers.startsWith("supplements");
}
