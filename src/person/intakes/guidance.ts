import { word } from "../../document/leaves.ts";
import type { Schema } from "../../document/schema.ts";
import { type ComponentId, components } from "../../food/components.ts";
import type { Caution } from "../caution.ts";
import { countsFood, type ReferenceIntakes } from "./referenceIntakes.ts";
import type { UpperFigure } from "./resolve.ts";
import type { UpperKind } from "./table.ts";

/** Levels that stand where no level could be set from harm. */
type GuidanceKind = Extract<UpperKind, "guidance level" | "safe level of intake">;

/** What a kind of level is, by the body that set it. */
const kinds: { readonly [K in GuidanceKind]: Omit<Caution, "code"> } = {
  "guidance level": {
    text: "guidance levels, given where the evidence was too thin for a safe upper level; more is proven neither harmful nor safe",
    source: "Expert Group on Vitamins and Minerals (UK) 2003, Safe Upper Levels for Vitamins and Minerals",
    check: "unverified",
  },
  "safe level of intake": {
    text: "safe levels of intake, given where no upper level could be set; no harm is expected up to them, and from where more does harm is not known",
    source: "EFSA 2025, Overview on Tolerable Upper Intake Levels, version 11, page 3",
    check: "issuer",
  },
};

/**
 * Guidance of which more has harmed people who had it from food and drink: bone and the unborn child
 * (retinol), the thyroid (iodine), the unborn child and the heart (caffeine). The notes of the rows, and
 * the upper levels that other bodies set of the first two, say as much. It is taken for a limit.
 */
const HARMS: readonly ComponentId[] = ["retinol", "iodine", "caffeine"];

/** What a figure is of, and what kind of level. */
type Level = Pick<UpperFigure, "of" | "kind">;

/** Whether a level is guidance, from where more does harm not being known. */
export function isGuidance({ of, kind }: Level): boolean {
  return Object.hasOwn(kinds, kind) && !of.some((id) => HARMS.includes(id));
}

/** Whether a level was set from harm, or is guidance of what does harm. */
export function isFromHarm(level: Level): boolean {
  return (
    level.kind === "UL" || level.kind === "SUL" || (Object.hasOwn(kinds, level.kind) && !isGuidance(level))
  );
}

/** The schema of how guidance is taken. */
export function guidanceTaken(): Schema<"tell" | "limit"> {
  return word(["tell", "limit"]);
}

/** Says which levels are no limits, and what they are: one caution for each kind. */
export function guidanceCautions(intakes: ReferenceIntakes): Caution[] {
  const uppers = new Set(intakes.components.flatMap((id) => intakes.get(id).uppers.filter(countsFood)));
  return (Object.keys(kinds) as GuidanceKind[]).flatMap((kind): Caution[] => {
    const levels = [...uppers]
      .filter((upper) => upper.kind === kind && isGuidance(upper))
      .map(({ of, value, unit }) => `${of.map((id) => components[id].name).join(", ")} ${value} ${unit}`);
    if (levels.length === 0) return [];
    const { text, source, check } = kinds[kind];
    return [
      {
        code: "guidance-level",
        text: `Told, and not taken for limits: ${levels.join("; ")} a day. These are ${text}.`,
        source,
        check,
      },
    ];
  });
}
