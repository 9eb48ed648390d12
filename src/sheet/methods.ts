import { britishEnglish, type Language, say } from "../document/language.ts";
import { read } from "../document/read.ts";
import { language as languageSchema } from "../document/readLanguage.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import { components as registry } from "../food/components.ts";
import { likelySystem } from "../food/energy.ts";
import { isZero, ZERO } from "../number/exact.ts";
import { version } from "../number/version.ts";
import { type Citation, type Cited, type CitedOptions, citations, sheetsIn } from "./citations.ts";
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";

/** Options of {@link methods}. */
export interface MethodsOptions extends CitedOptions {
  readonly language?: Language;
}

/**
 * Writes the paragraph that a paper's methods need, from what was really used: the data sets with their
 * releases, how yields and retention were reckoned, what was borrowed, calculated, derived or presumed, and
 * what was missing. A start to be edited: how the recipes were come by, nobody but you knows.
 *
 * Throws `component-unknown`, and `sheet-malformed` for what has no sheets or an option that there is not.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * methods(porridge, { components: ["iodine"] }).includes("Nothing was known of iodine"); // => true
 * ```
 */
export function methods(x: Cited, how: MethodsOptions = {}): string {
  const { components: asked, language = britishEnglish } = read(methodsHow(), how, "sheet-malformed", [
    "how",
  ]);
  const sheets = sheetsIn(x);
  const components = asked ?? [...new Set(sheets.flatMap(({ plan }) => plan.components))];
  const { sources } = citations(sheets, { components });
  const tell = (phrase: string, gaps: { readonly [gap: string]: string | number } = {}): string =>
    say(
      language,
      phrase,
      Object.fromEntries(Object.entries(gaps).map(([gap, value]) => [gap, String(value)])),
    );
  const and = (all: readonly string[]): string => all.join("; ");
  const named = ({ title, source, release, figures }: Citation): string =>
    title === undefined || release === undefined
      ? tell("{source} ({figures})", { source: title ?? source, figures })
      : tell("{source}, release {release} ({figures})", { source: title, release, figures });
  const of = (kind: Citation["kind"]): readonly Citation[] => sources.filter((each) => each.kind === kind);
  const sentences = [
    sheets.length === 1
      ? tell("Composition was reckoned in exact fractions with steelyard {version} from 1 recipe as eaten.", {
          version,
        })
      : tell(
          "Composition was reckoned in exact fractions with steelyard {version} from {count} recipes as eaten.",
          {
            version,
            count: sheets.length,
          },
        ),
    ...when(of("data"), (all) =>
      tell("Figures of foods came from {sources}; the number of figures is given in brackets.", {
        sources: and(all.map(named)),
      }),
    ),
    ...when(of("formula"), (all) =>
      tell("Components that a source does not give were worked out from its other figures by {sources}.", {
        sources: and(all.map(named)),
      }),
    ),
    ...(components.includes("energy") ? energies(sheets, tell) : []),
    ...imputed(sheets, components, tell),
    ...yields(sheets, tell),
    ...when(of("yield"), (all) =>
      tell("Yield factors came from {sources}.", { sources: and(all.map(named)) }),
    ),
    ...when(of("retention"), (all) =>
      tell("What cooking leaves of components was reckoned line by line by {sources}.", {
        sources: and(all.map(named)),
      }),
    ),
    ...when(of("presumption"), (all) =>
      tell("Figures that no source gives and that were assumed to be zero: {count}.", {
        count: all.reduce((sum, { figures }) => sum + figures, 0),
      }),
    ),
    ...gaps(sheets, components, tell),
  ];
  return sentences.join(" ");
}

const methodsHow: () => Schema<MethodsOptions> = /* @__PURE__ */ once(() =>
  fields<MethodsOptions>({ components: optional(list(componentId())), language: optional(languageSchema()) }),
);

type Tell = (phrase: string, gaps?: { readonly [gap: string]: string | number }) => string;

function when<T>(all: readonly T[], sentence: (all: readonly T[]) => string): string[] {
  return all.length === 0 ? [] : [sentence(all)];
}

/** By which factors energy was reckoned, as far as foods tell, and whether cooking took some of it. */
function energies(sheets: readonly Sheet[], tell: Tell): string[] {
  const foods = new Map<string, Set<string>>();
  let isLess = false;
  for (const { plan, values } of sheets)
    for (const [i, { source, nested }] of plan.lines.entries()) {
      const food = source.food?.input;
      const inner = source.asEaten ?? nested;
      if (inner) continue;
      const figure = source.figure(componentIndex("energy"));
      if (!food || !figure || figure.kind === "missing" || isZero(values.grams[i] ?? ZERO)) continue;
      const { system } = likelySystem(food);
      const name = tell("{name} ({source})", { name: tell(system.name), source: system.source });
      foods.set(name, (foods.get(name) ?? new Set()).add(food.id));
      isLess ||= figure.kind === "derived" && source.left.size > 0;
    }
  if (foods.size === 0) return [];
  const systems = [...foods].map(([name, all]) =>
    all.size === 1
      ? tell("{system} for 1 food", { system: name })
      : tell("{system} for {count} foods", { system: name, count: all.size }),
  );
  return [
    tell("Energy is that of the sources, by {systems}.", { systems: systems.join("; ") }),
    ...(isLess ? [tell("What cooking takes of its constituents was taken off it by the same factors.")] : []),
  ];
}

/** Figures that others calculated, or took from another food, each of a food and a component once. */
function imputed(
  sheets: readonly Sheet[],
  components: NonNullable<CitedOptions["components"]>,
  tell: Tell,
): string[] {
  const found = { borrowed: new Set<string>(), calculated: new Set<string>() };
  for (const { plan } of sheets)
    for (const { source } of plan.lines)
      for (const id of components) {
        const { kind, inputs = [] } = source.figure(componentIndex(id)) ?? { kind: "missing" };
        for (const each of ["borrowed", "calculated"] as const)
          if (kind === each || inputs.includes(each)) found[each].add(`${source.id} ${id}`);
      }
  const [borrowed, calculated] = [found.borrowed.size, found.calculated.size];
  if (borrowed + calculated === 0) return [];
  return [
    tell(
      "Of these figures, borrowed from another food: {borrowed}; calculated by their source: {calculated}.",
      {
        borrowed,
        calculated,
      },
    ),
  ];
}

function yields(sheets: readonly Sheet[], tell: Tell): string[] {
  const of = (is: (s: Sheet) => boolean): number => sheets.filter(is).length;
  const weighed = of(({ values }) => values.cooking.by === "mass");
  const presumed = of(({ values: { cooking } }) => cooking.by === "factor" && cooking.presumed === true);
  const factor = of(
    ({ values: { cooking } }) =>
      cooking.by === "factor" && cooking.presumed !== true && cooking.factor.n !== cooking.factor.d,
  );
  const lines = of(({ values }) => values.cooking.by === "lines");
  const none = sheets.length - weighed - presumed - factor - lines;
  const said = [
    ...(weighed > 0 ? [tell("weighed after cooking for {count}", { count: weighed })] : []),
    ...(factor > 0 ? [tell("reckoned by a yield factor for {count}", { count: factor })] : []),
    ...(lines > 0 ? [tell("summed of yields of single ingredients for {count}", { count: lines })] : []),
    ...(presumed > 0 ? [tell("presumed to follow an earlier yield for {count}", { count: presumed })] : []),
    ...(none > 0 ? [tell("taken to be that of the ingredients for {count}", { count: none })] : []),
  ];
  return [
    tell("The mass as eaten was {how}; a change of mass was taken to be water.", { how: said.join(", ") }),
  ];
}

/** What nobody knows of some lines, or of any. */
function gaps(
  sheets: readonly Sheet[],
  components: NonNullable<CitedOptions["components"]>,
  tell: Tell,
): string[] {
  const silent = components.filter((id) => sheets.some((s) => !s.total(id).complete));
  const isNothing = (id: (typeof components)[number]): boolean =>
    sheets.every((s) => s.total(id).bound === "unknown" || isZero(s.total(id).coverage));
  const nothing = silent.filter(isNothing);
  const some = silent.filter((id) => !nothing.includes(id));
  const names = (ids: typeof components): string =>
    ids.map((id) => tell(registry[id].name).toLowerCase()).join(", ");
  return [
    ...when(some, (ids) =>
      tell("Totals are lower bounds, since some ingredients say nothing of them, for {names}.", {
        names: names(ids),
      }),
    ),
    ...when(nothing, (ids) => tell("Nothing was known of {names}.", { names: names(ids) })),
    ...(silent.length === 0 ? [tell("No figure was missing.")] : []),
  ];
}
