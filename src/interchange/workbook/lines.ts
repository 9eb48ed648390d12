import { type Language, say } from "../../document/language.ts";
import {
  type ComponentId,
  componentAt,
  componentIds,
  isListed,
  isOwnComponent,
} from "../../food/components.ts";
import { exactText } from "../../number/digits.ts";
import { type Exact, fraction } from "../../number/exact.ts";
import { compareText } from "../../number/text.ts";
import { componentIndex, type PlanLine } from "../../sheet/plan.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { lineYield } from "../../sheet/values.ts";

/** What is known of a component in 100 g of a line, as eaten. */
export interface KnownFigure {
  /** What is added up, or what stands in place of a figure, `trace`; undefined where nothing is known. */
  readonly value: Exact | string | undefined;
  /** Of a nested recipe of which a part says nothing: the figure is a floor. */
  readonly inPart: boolean;
  /** What the figure says of itself, where it does not come from its source as it is. */
  readonly note: string;
}

/** A line of a page: one food, or nested recipe, in one state and cooked in one way. */
export interface PageLine {
  readonly name: string;
  readonly state: string;
  readonly source: string;
  readonly added: "cooking" | "serving";
  /** Cooked ÷ raw mass, by what it says itself. */
  readonly yieldFactor: Exact;
  readonly figures: readonly KnownFigure[];
  /** Tells lines apart that share a key and not their figures. */
  readonly alike: string;
}

/** The line of a sheet in that place, with its figures as eaten but for what the pot does to water. */
export function pageLine(s: Sheet, i: number, language: Language): PageLine {
  const { line, source } = s.plan.lines[i] as PlanLine;
  const yieldFactor = lineYield(s.plan, i);
  const figures: KnownFigure[] = [];
  for (const id of s.plan.components) {
    const place = componentIndex(id);
    figures[place] = knownFigure(source, place, language);
  }
  const written = figures.map(({ value, inPart }) =>
    value === undefined ? "" : `${typeof value === "string" ? value : exactText(value)}${inPart ? "+" : ""}`,
  );
  return {
    name: say(language, source.name),
    state: say(language, source.state ?? ""),
    source: source.food?.input.source ?? "",
    added: line.added,
    yieldFactor,
    figures,
    alike: [line.key, source.id, line.added, exactText(yieldFactor), ...written].join("\n"),
  };
}

const FLOOR: ReadonlySet<string> = /* @__PURE__ */ new Set(["missing", "trace", "below"]);

function knownFigure(source: PlanLine["source"], k: number, language: Language): KnownFigure {
  const value = fraction(source.values[k] ?? 0n, source.scale);
  const own = source.figure(k);
  if (own === undefined) {
    const floors = source.marks(k).filter(({ kind }) => FLOOR.has(kind));
    const silent = floors.some(({ kind, share }) => kind === "missing" && share.eq(1));
    const nothing = silent && value.isZero();
    return { value: nothing ? undefined : value, inPart: floors.length > 0 && !nothing, note: "" };
  }
  const { kind, note = "", high } = own;
  if (kind === "missing") return { value: undefined, inPart: false, note: "" };
  if (kind === "trace") return { value: say(language, "trace"), inPart: false, note };
  if (kind === "below")
    return { value: say(language, "below {limit}", { limit: high?.toString() ?? "" }), inPart: false, note };
  const told =
    kind === "known" ? note : note === "" ? say(language, kind) : `${say(language, kind)}: ${note}`;
  const floor = own.inputs?.some((each) => FLOOR.has(each)) ?? false;
  return { value, inPart: floor, note: told };
}

/** Components of which some line knows something, in the order of the registry. */
export function knownComponents(lines: readonly PageLine[]): readonly ComponentId[] {
  const all = new Set(
    lines.flatMap(({ figures }) => Object.keys(figures).map((k) => componentAt(Number(k)))),
  );
  const own = [...all].filter(isOwnComponent).sort(compareText);
  return [...componentIds, ...own].filter((id) =>
    lines.some(({ figures }) => {
      const value = figures[componentIndex(id)]?.value;
      return isListed(id) || typeof value === "string"
        ? value !== undefined
        : value !== undefined && value.n > 0n;
    }),
  );
}
