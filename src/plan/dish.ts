import { britishEnglish, type Language, say } from "../document/language.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { fault, quote } from "../number/error.ts";
import { type Exact, ONE } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";
import { ToldResult } from "../number/told.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type DishVersion, type DishVersions, versionsOf } from "./dishVersion.ts";
import type { PotChoice } from "./input.ts";
import { type Parted, partDish } from "./pot.ts";
import type { ReadDish } from "./read/readDish.ts";
import { batchOf } from "./share/batch.ts";
import type { Eater, EaterGroup } from "./share/groups.ts";
import type { PartServing, Pot } from "./share/parts.ts";
import type { DishSharing } from "./share/sharing.ts";

/** Something that only the cook can decide; the answer goes into `answers`. */
export interface PlanQuestion {
  readonly code: "per-portion-in-pot";
  readonly meal: string;
  readonly dish: string;
  readonly line: string;
  readonly text: string;
  readonly options: readonly { readonly answer: PotChoice; readonly text: string }[];
}

const OPTIONS: PlanQuestion["options"] = [
  { answer: "serving", text: "add it to each portion at serving, uncooked" },
  { answer: "pot", text: "let it follow the pot: larger portions get more of it" },
];

/** What a dish is made from. */
interface DishAt {
  readonly meal: string;
  readonly name: string;
  readonly base: Sheet;
  readonly eaters: readonly Eater[];
  readonly read: ReadDish;
  /** Who eats of one pot, where that is settled. */
  readonly groups?: readonly EaterGroup[] | undefined;
  readonly sharing?: DishSharing | undefined;
  /** Where someone has a version of their own. */
  readonly versions?: DishVersions | undefined;
  /** What people are called, by id. */
  readonly names?: ReadonlyMap<string, string>;
}

/** What a dish is to those who eat of one pot. */
export interface KnownDish {
  readonly name: string;
  readonly method: readonly string[];
  /** Keys of lines that somebody of them has. */
  readonly lines: readonly string[];
}

function keysOf({ plan }: Sheet): readonly string[] {
  return plan.lines.map(({ line }) => line.key);
}

/** A dish for everyone: what is cooked once, and what each person gets of it. */
export class PlannedDish extends ToldResult {
  readonly meal: string;
  readonly name: string;
  /** All that everyone is served, cooked and added: the sum of the portions. */
  readonly batch: Sheet;
  /** How far pots were brought together; nothing where that was not asked, or no parts can differ. */
  readonly sharing: DishSharing | undefined;
  readonly #base: Sheet;
  readonly #eaters: readonly Eater[];
  readonly #read: ReadDish;
  readonly #groups: readonly EaterGroup[] | undefined;
  readonly #at: DishAt;
  #parted: Parted | undefined;

  /** @internal Use {@link portionPlan}. */
  constructor(at: DishAt) {
    super();
    this.#at = at;
    this.meal = at.meal;
    this.name = at.name;
    this.batch = batchOf(at.base, at.eaters, at.groups);
    this.#base = at.base;
    this.#eaters = at.eaters;
    this.#read = at.read;
    this.#groups = at.groups;
    this.sharing = at.sharing;
  }

  /** Grams per millilitre of what is cooked, where the plan was told. */
  get density(): Exact | undefined {
    return this.#read.density;
  }

  /**
   * What is cooked once: one pot for everyone, unless held parts had to move against each other for
   * someone. None where nothing is cooked.
   */
  get pots(): readonly Pot[] {
    return this.#apart.pots;
  }

  /** Versions of it that people eat instead, and what each costs in pots; empty where nobody has one. */
  get versions(): readonly DishVersion[] {
    const { versions } = this.#at;
    return versions ? versionsOf(this.#base, versions, this.#apart.groups) : [];
  }

  /** How many pots there are and why, and what it costs whom where they were brought together. */
  get why(): string {
    return this.whyIn(britishEnglish);
  }

  /** @internal The same in a language. */
  whyIn(language: Language): string {
    const { versions, names } = this.#at;
    const each = versions ? versionsOf(this.#base, versions, this.#apart.groups, language) : [];
    const told = each.map(({ people, text: version }) =>
      say(language, "{people}, {version}", {
        people: people.map((person) => names?.get(person) ?? person).join(", "),
        version,
      }),
    );
    return [this.#why(language), ...told, ...(this.sharing ? [this.sharing.text] : [])].join(". ");
  }

  #why(language: Language): string {
    const { pots } = this;
    const number = String(pots.length);
    if (pots.length === 0) return say(language, "nothing of it is cooked for more than one person");
    if (pots.length === 1) return say(language, "one pot: what is held keeps the same ratios for everyone");
    if (pots.every(({ ratios }) => ratios.length === 0))
      return say(language, "{number} pots, one for each version", { number });
    const parts = [...new Set(pots.flatMap(({ ratios }) => ratios.map(({ part }) => part)))];
    const each = parts.map((part) => {
      const all = pots.map(({ ratios }) => ratios.find((own) => own.part === part)?.ratio ?? ONE);
      const line = this.#base.plan.lines.find(({ line }) => line.part === undefined && line.key === part);
      return say(language, "{part} at {ratios}", {
        part: line ? say(language, line.source.name) : part,
        ratios: all.map((ratio) => showFigure(ratio, { language })).join(", "),
      });
    });
    return say(
      language,
      "{number} pots, since people need other ratios than the recipe's: {parts} of what it has",
      { number, parts: each.join("; ") },
    );
  }

  /** What everyone gets: a share of a pot, and what is added to it. Together they are the portion. */
  get servings(): readonly PartServing[] {
    return this.#apart.servings;
  }

  /** One person's part. Throws `plan-malformed` where the person has none. */
  serving(person: string): PartServing {
    const found = this.servings.find((each) => each.person === person);
    if (found) return found;
    const people = this.servings.map((each) => each.person);
    const hint = didYouMean(person, people, "use the id of someone who is served it");
    throw fault("plan-malformed", `${quote(person)} is not served ${quote(this.name)}`, hint);
  }

  /** Lines that are to be the same for everyone, but go into a pot that is shared out unequally. */
  get questions(): readonly PlanQuestion[] {
    const asked = this.#apart.groups.flatMap((group) => this.#asked(group));
    return asked.filter(({ line }, i) => asked.findIndex((other) => other.line === line) === i);
  }

  #asked(group: EaterGroup): readonly PlanQuestion[] {
    if (group.pot.length === 0) return [];
    const doses = group.apart.flatMap((i) => {
      const own = this.#base.plan.lines[i];
      return own?.line.scaling === "per-portion" && own.line.added === "cooking" ? [own] : [];
    });
    return doses.map(({ line, source }) => ({
      code: "per-portion-in-pot",
      meal: this.meal,
      dish: this.name,
      line: line.key,
      text: `${source.name} is to be the same for everyone, but it goes into a pot of which each takes ${this.#shares(group)}: nobody would get what is meant`,
      options: OPTIONS,
    }));
  }

  /** The least and the most that someone takes of the pot. */
  #shares({ eaters }: EaterGroup): string {
    const shares = eaters.map(({ person }) => this.serving(person).share);
    const end = (better: (a: Exact, b: Exact) => boolean): string =>
      showPercent(
        shares.reduce((best, each) => (better(each, best) ? each : best)),
        { significant: 3 },
      );
    return `from ${end((a, b) => compareRatios(a, b) < 0)} to ${end((a, b) => compareRatios(a, b) > 0)}`;
  }

  /** @internal Keys of lines as someone's own version of the dish has them. */
  ownKeys(person: string, keys: readonly string[]): readonly string[] {
    const version = this.#at.versions?.of.get(person);
    if (!version) return keys;
    const keyIn = ({ plan }: Sheet, i: number): string => plan.lines[i]?.line.key ?? "";
    const names = new Map(
      version.at.map((place, i) => [keyIn(this.#base, place), keyIn(version.sheet, i)] as const),
    );
    return keys.map((key) => names.get(key) ?? key);
  }

  /**
   * @internal The dish as those who eat of one pot know it: by its own name and method where they all have
   * the same version of it, with the lines that some of them have, by their keys in the sheet of all versions.
   */
  knownTo(people: readonly string[]): KnownDish {
    const { versions } = this.#at;
    const { plan, origin } = this.#base;
    const own = new Set(people.flatMap((person) => versions?.of.get(person) ?? versions?.usual ?? []));
    const [first, ...others] = own;
    if (!first) return { name: this.batch.name, method: origin.method ?? [], lines: keysOf(this.#base) };
    const { usual = first } = versions ?? {};
    const { sheet, at } = others.length === 0 ? first : usual;
    const keys = new Map(keysOf(sheet).map((key, i) => [key, plan.lines[at[i] ?? -1]?.line.key ?? key]));
    return {
      name: others.length === 0 ? sheet.name : this.batch.name,
      method: (sheet.origin.method ?? []).map((step) =>
        step.replace(/\{([^{}]+)\}/g, (_, key: string) => `{${keys.get(key) ?? key}}`),
      ),
      lines: [...own].flatMap(({ at }) => at.flatMap((place) => plan.lines[place]?.line.key ?? [])),
    };
  }

  /** @internal The same dish with lines that draw on another sheet of the same recipe. */
  madeFrom(base: Sheet): PlannedDish {
    return base === this.#base ? this : this.with({ base, groups: this.groups() });
  }

  /** @internal The same dish made from other things. */
  with(changes: Partial<Pick<DishAt, "base" | "eaters" | "groups">>): PlannedDish {
    return new PlannedDish({ ...this.#at, ...changes });
  }

  /** @internal One portion as written. The same sheet on another day is the same dish. */
  base(): Sheet {
    return this.#base;
  }

  /** @internal Who eats of one pot, and what goes into it; those without a pot have no line to tell shares by. */
  groups(): readonly EaterGroup[] {
    return this.#apart.groups;
  }

  get #apart(): Parted {
    this.#parted ??= partDish(this.#base, this.#eaters, this.#read.density, this.#groups);
    return this.#parted;
  }
}
