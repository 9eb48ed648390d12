import { usCustomary } from "../../measure/data/usCustomary.ts";
import { exactText } from "../../number/digits.ts";
import { exact, fraction, minus, over, times } from "../../number/exact.ts";
import { freezeAll } from "../../number/freeze.ts";
import type { ComponentId } from "../components.ts";
import type { Figure, FoodInput, FoodMeasure } from "../food.ts";
import { cautions } from "./cautions.ts";
import { coumarin } from "./coumarin.ts";
import { derivations } from "./derivation.ts";
import { bare, fattyAcids, type PrintedAcid } from "./fattyAcids.ts";
import { iodine } from "./iodine.ts";
import { starterLenders } from "./lenders.ts";
import {
  type FattyAcid,
  type PanelName,
  panels,
  type Shelf,
  type SpoonedBy,
  type StarterColumn,
  type StarterRow,
  type VolumeMeasure,
} from "./row.ts";
import { starterKitchenNames } from "./starterKitchenNames.ts";

/** Turns a row into a food. Its figures are read when they are first asked for. */
export function foodInput(shelf: Shelf, row: StarterRow): FoodInput {
  const measures = readMeasures(row.measures ?? "");
  const origin = row.origin ?? shelf.origin;
  let figures: FoodInput["per100g"] | undefined;
  return {
    id: row.id,
    name: row.name,
    ...(starterKitchenNames[row.id] !== undefined && { kitchenName: starterKitchenNames[row.id] }),
    state: row.state,
    group: shelf.group,
    origin,
    get per100g(): FoodInput["per100g"] {
      figures ??= freezeAll(readFigures(row, origin === "plant" && !row.otherIsomers));
      return figures;
    },
    source: `USDA SR28, NDB ${row.ndb}${row.dryMatter === undefined ? "" : ", by dry matter"}`,
    ...(measures.length > 0 && { measures, measuredWith: "us" as const }),
    ...(row.density && { density: density(row.density, measures) }),
    ...(row.bulkDensity && { density: row.bulkDensity }),
    ...(row.divides && { divides: division(row.divides) }),
    ...(row.refuse && { edibleShare: edibleShare(row.refuse) }),
    ...(row.factors && { energyFactors: energyFactors(row.factors) }),
    ...(row.fortifiedWith && { fortifiedWith: row.fortifiedWith }),
    ...(row.allergens && { allergens: row.allergens }),
    ...(row.cautions && { cautions: row.cautions.map((code) => ({ code, ...cautions[code] })) }),
    aisle: row.aisle ?? shelf.aisle,
  };
}

function readFigures(row: StarterRow, standIn: boolean): FoodInput["per100g"] {
  const figures: { [C in ComponentId]?: Figure } = {};
  const acids: { [A in FattyAcid]?: PrintedAcid } = {};
  const longChain: { [C in "epa" | "dpa" | "dha"]?: PrintedAcid } = {};
  const told = row.dryMatter === undefined ? statisticsOf(row.errors) : [];
  let at = 0;
  for (const name of Object.keys(panels) as PanelName[]) {
    const cells = row[name]?.split(" ") ?? [];
    panels[name].forEach((column: StarterColumn, i) => {
      const sure = told[at++];
      const cell = readCell(cells[i], column, row);
      if (!cell) return;
      if ("acid" in column) {
        acids[column.acid] = cell;
        return;
      }
      const id = column.component;
      figures[id] = sure ? { ...cell, ...scaled(sure, column) } : bare(cell);
      if (id === "epa" || id === "dpa" || id === "dha") longChain[id] = cell;
    });
  }
  const iodineFigure = Object.hasOwn(iodine, row.id) ? iodine[row.id] : undefined;
  const coumarinFigure = Object.hasOwn(coumarin, row.id) ? coumarin[row.id] : undefined;
  for (const id of row.none ?? [])
    figures[id] = { value: "0", presumed: true, source: "presumed zero: neither fermented nor mixed" };
  return {
    ...figures,
    ...fattyAcids(acids, longChain, standIn),
    ...(iodineFigure && { iodine: iodineFigure }),
    ...(coumarinFigure && { coumarin: coumarinFigure }),
  };
}

interface Statistic {
  readonly error: string;
  readonly count: number;
}

/** Standard errors and counts by column, all panels one after another. */
function statisticsOf(errors = ""): readonly (Statistic | undefined)[] {
  return errors.split(" ").flatMap((token): (Statistic | undefined)[] => {
    if (token.startsWith("~")) return Array.from({ length: Number(token.slice(1)) });
    const [error, count] = token.split(":");
    if (!error || !count) return [];
    return [{ error: pointed(error, 3), count: Number(count) }];
  });
}

function scaled({ error, count }: Statistic, column: StarterColumn): Statistic {
  const by = "scale" in column ? column.scale : undefined;
  return { error: by === undefined ? error : exactText(over(exact(error), fraction(BigInt(by)))), count };
}

/** What the source prints, given its digits alone: `53` with 3 places is `0.053`. */
function pointed(digits: string, places: number): string {
  if (places === 0) return digits;
  const all = digits.padStart(places + 1, "0");
  return `${all.slice(0, -places)}.${all.slice(-places)}`;
}

const CELL = /^(\d+)(\*|[A-Za-z])?(\d)?$/;

function readCell(cell: string | undefined, column: StarterColumn, row: StarterRow): PrintedAcid | undefined {
  const [, digits, letter, place] = CELL.exec(cell ?? "-") ?? [];
  if (digits === undefined) return undefined;
  const printed = pointed(digits, column.places);
  const scale = "scale" in column ? column.scale : undefined;
  const value = scale === undefined ? printed : exactText(over(exact(printed), fraction(BigInt(scale))));
  const how = said(letter, place === undefined ? undefined : row.lenders?.split(" ")[Number(place)]);
  const { dryMatter } = row;
  if (dryMatter === undefined || how.presumed) return { value, ...how };
  const dried = exactText(over(times(exact(value), fraction(100n)), exact(dryMatter)));
  return { value: dried, derived: `by dry matter, ${dryMatter} g in 100 g of the raw food`, ...how };
}

/** What the source says of how it came by a figure: of a letter, and of the number of a lender. */
function said(letter: string | undefined, lender: string | undefined): Omit<PrintedAcid, "value"> {
  if (letter === "*") return { presumed: true };
  const how = letter === undefined ? undefined : derivations[letter];
  if (how === undefined) return {};
  const { calculated, borrowed = "" } = how;
  const from =
    lender === undefined ? "a like food, or another form of it" : `${starterLenders[lender]} (NDB ${lender})`;
  const isBorrowed = how.borrowed !== undefined || lender !== undefined;
  return {
    ...(isBorrowed && { borrowedFrom: borrowed === "" ? from : `${from}, ${borrowed}` }),
    ...(calculated !== undefined && { calculated }),
  };
}

function readMeasures(text: string): readonly FoodMeasure[] {
  if (text === "") return [];
  return text.split("; ").map((each) => {
    const space = each.lastIndexOf(" ");
    return { name: each.slice(0, space), grams: each.slice(space + 1) };
  });
}

/**
 * Grams per millilitre, exactly as one of the food's own measures implies, so that a cup and the
 * same volume in millilitres weigh alike.
 */
function density(from: SpoonedBy, measures: readonly FoodMeasure[]): string {
  const grams = measures.find((m) => m.name === from)?.grams ?? "0";
  const unit = from.split(", ")[0] as VolumeMeasure;
  const millilitres = unit === "litre" ? "1000" : (usCustomary.ml[unit] ?? "1");
  return exactText(over(exact(grams), exact(millilitres)));
}

function division(text: string): NonNullable<FoodInput["divides"]> {
  const [step = "1", by] = text.split(" ");
  return { step, ...(by !== undefined && { by }) };
}

function edibleShare(refuse: string): string {
  return exactText(over(minus(fraction(100n), exact(refuse)), fraction(100n)));
}

function energyFactors(text: string): NonNullable<FoodInput["energyFactors"]> {
  const [protein = "", fat = "", carbohydrate = ""] = text.split(" ");
  return { protein, fat, carbohydrate };
}
