import { kitchenNames } from "./data/kitchenNames.ts";
import { plainWords } from "./plainWords.ts";

/** What words may mean: those that a food should have, and those that it has unless another is said. */
export interface WordReading {
  readonly core: readonly string[];
  readonly soft: readonly string[];
  /** What it counts less than the likeliest one. */
  readonly less: number;
}

/** Words of a kitchen's name, and what it means. */
interface Rule {
  readonly words: readonly string[];
  readonly means: readonly WordReading[];
}

let rules: ReadonlyMap<string, Rule> | undefined;

/** What words may mean: as they stand, and with the longest kitchen's name among them put into a table's words. */
export function readingsOf(words: readonly string[]): WordReading[] {
  const rule = ruleFor(words);
  const asWritten: WordReading = { core: words, soft: [], less: rule ? AS_WRITTEN : 0 };
  if (!rule) return [asWritten];
  const rest = words.filter((word) => !rule.words.includes(word));
  const meant = rule.means.map(({ core, ...others }) => ({ core: [...core, ...rest], ...others }));
  return [...meant, asWritten];
}

const AS_WRITTEN = 0.15;

/** The rule of most words that are all there; of those, of the words that stand last, where a name's noun stands. */
function ruleFor(words: readonly string[]): Rule | undefined {
  rules ??= readRules();
  const some = words.slice(0, MOST_WORDS);
  for (let n = Math.min(LONGEST_NAME, some.length); n > 0; n--) {
    const found = subsets(some, n).find((each) => rules?.has(keyOf(each)));
    if (found) return rules.get(keyOf(found));
  }
  return undefined;
}

const MOST_WORDS = 8;
const LONGEST_NAME = 4;

/** Every choice of `n` words, those that stand last first. */
function subsets(words: readonly string[], n: number): string[][] {
  if (n === 0) return [[]];
  return words
    .map((word, i) => [word, i] as const)
    .reverse()
    .flatMap(([word, i]) => subsets(words.slice(0, i), n - 1).map((before) => [...before, word]));
}

function readRules(): ReadonlyMap<string, Rule> {
  const lines = kitchenNames.split("\n").filter((line) => / [=~] /.test(line));
  return new Map(
    lines.map((line): [string, Rule] => {
      const [name = "", meaning = ""] = line.split(/ [=~] /);
      const less = line.includes(" ~ ") ? NEAR : 0;
      const words = plainWords(name);
      return [
        keyOf(words),
        { words, means: meaning.split(" | ").map((each, i) => readMeaning(each, less + i * NEXT)) },
      ];
    }),
  );
}

/** A meaning that stands first is the likelier one. */
const NEXT = 0.01;
/** What is only near the thing meant. */
const NEAR = 0.3;

function readMeaning(meaning: string, less: number): WordReading {
  const [core = "", soft = ""] = meaning.split(":");
  return { core: plainWords(core), soft: plainWords(soft), less };
}

function keyOf(words: readonly string[]): string {
  return [...new Set(words)].sort().join(" ");
}
