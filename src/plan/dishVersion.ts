import { britishEnglish, type Language, say } from "../document/language.ts";
import { equals, isZero, over, ZERO } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Version } from "./read/versions.ts";
import type { EaterGroup } from "./share/groups.ts";

/** A version of a dish that some people eat instead of it. */
export interface DishVersion {
  readonly people: readonly string[];
  /** Names of what it lacks of the dish, and of what it has beside it. */
  readonly without: readonly string[];
  readonly withMore: readonly string[];
  /** Names of what it has in another proportion. */
  readonly otherAmounts: readonly string[];
  /** Whether it comes out of a pot that others eat of, or is one more to cook; `none` where nothing of it is cooked. */
  readonly pot: "shared" | "own" | "none";
  /** In a phrase: `without Milk, with Soya milk: one more pot to cook`. */
  readonly text: string;
}

/** Who eats which version of a dish; `usual` is the dish as the meal has it. */
export interface DishVersions {
  readonly usual: Version | undefined;
  readonly of: ReadonlyMap<string, Version>;
}

/** Tells the versions of a dish apart; `all` is the sheet of all of them. */
export function versionsOf(
  all: Sheet,
  { usual, of }: DishVersions,
  groups: readonly EaterGroup[],
  language: Language = britishEnglish,
): readonly DishVersion[] {
  const people = new Map<Version, string[]>();
  for (const { eaters } of groups) {
    for (const { person } of eaters) {
      const version = of.get(person);
      if (version && version !== usual) people.set(version, [...(people.get(version) ?? []), person]);
    }
  }
  return [...people].map(([version, eaters]): DishVersion => {
    const named = (places: readonly number[]): readonly string[] =>
      places.map((place) => all.plan.lines[place]?.source.name ?? "");
    const said = (phrase: string, names: readonly string[]): readonly string[] =>
      names.length === 0
        ? []
        : [say(language, phrase, { lines: names.map((name) => say(language, name)).join("; ") })];
    const without = named((usual?.at ?? []).filter((place) => !version.at.includes(place)));
    const withMore = named(version.at.filter((place) => !usual?.at.includes(place)));
    const otherAmounts = usual ? named(differing(version, usual)) : [];
    const own = groups.filter((group) => group.eaters.some(({ person }) => eaters.includes(person)));
    const isCooked = own.some((group) => group.pot.length > 0);
    const isShared = own.some((group) => group.eaters.some(({ person }) => !eaters.includes(person)));
    const pot = isShared ? "shared" : isCooked ? "own" : "none";
    const differs = [
      ...said("without {lines}", without),
      ...said("with {lines}", withMore),
      ...said("with other amounts of {lines}", otherAmounts),
    ];
    const how = differs.length === 0 ? say(language, "as the dish is") : differs.join("; ");
    const text = say(language, POT[pot], { version: how });
    return { people: eaters, without, withMore, otherAmounts, pot, text };
  });
}

const POT: { readonly [P in DishVersion["pot"]]: string } = {
  shared: "{version}: it shares the pot",
  own: "{version}: one more pot to cook",
  none: "{version}: nothing of it is cooked",
};

/** Lines of both that keep another proportion to the first line of both. */
function differing(version: Version, usual: Version): readonly number[] {
  const gramsOf = ({ sheet, at }: Version, place: number) => sheet.values.grams[at.indexOf(place)] ?? ZERO;
  const both = version.at.filter((place) => usual.at.includes(place) && !isZero(gramsOf(usual, place)));
  const ratio = (place: number) => over(gramsOf(version, place), gramsOf(usual, place));
  const [first] = both;
  return first === undefined ? [] : both.filter((place) => !equals(ratio(place), ratio(first)));
}
