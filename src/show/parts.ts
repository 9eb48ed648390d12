import { word } from "../document/leaves.ts";
import { choice, list, type Schema } from "../document/schema.ts";

/** What a plan is shown in: its summary, or more of it by name. */
export type PlanPart =
  | "summary"
  | "amounts"
  | "pots"
  | "nutrients"
  | "intervals"
  | "rounding"
  | "unmet"
  | "people";

/** What a cooking schedule is shown in. */
export type SchedulePart = "order" | "batches" | "pots" | "servings" | "notes";

/** Which parts of a result to show: all of them, or some by name. */
export type Parts = "all" | PlanPart | SchedulePart | readonly (PlanPart | SchedulePart)[];

const NAMES: readonly (PlanPart | SchedulePart)[] = [
  ...(["summary", "amounts", "pots", "nutrients", "intervals", "rounding", "unmet", "people"] as const),
  ...(["order", "batches", "servings", "notes"] as const),
];

/** The schema of {@link Parts}. */
export function partsSchema(): Schema<Parts> {
  const one = word<"all" | PlanPart | SchedulePart>(["all", ...NAMES]);
  const some = list(word(NAMES));
  return choice<Parts>(
    [one, some],
    (given) => (Array.isArray(given) ? some : one),
    '"all", or parts by name',
  );
}

/** Whether a part is asked for. */
export function isAsked(parts: Parts, part: PlanPart | SchedulePart): boolean {
  return typeof parts === "string" ? parts === "all" || parts === part : parts.includes(part);
}
