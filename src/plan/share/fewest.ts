/** Who shares with whom, by place. */
export interface Grouping {
  readonly groups: readonly (readonly number[])[];
  /** Whether fewer groups are proven impossible. */
  readonly proven: boolean;
  /** Sets of people that were looked at. */
  readonly tried: number;
}

/**
 * The fewest groups such that each can share. Who can share can do so without any one of them.
 *
 * Everyone joins the first group that has room for them, or begins one. That is the fewest where as
 * many can be found of whom no two can share; otherwise fewer are looked for by trying all ways in
 * turn, as far as `tries` sets go.
 *
 * `onLine` says that what suits each is an interval, and that they come in the order of its far end.
 * Then whoever cannot join the last group can join none, and the first way is the fewest: no two of
 * those who began groups can share.
 */
export function fewest(
  count: number,
  canShare: (group: readonly number[]) => boolean,
  tries: number,
  onLine = false,
): Grouping {
  const asked = new Asked(canShare, tries);
  const first = firstFit(count, asked, onLine);
  if (onLine) return { groups: first, proven: !asked.spent, tried: asked.count };
  const apart = noTwoShare(
    count,
    first.map(([opener]) => opener as number),
    asked,
  );
  if (apart.length === first.length) return { groups: first, proven: true, tried: asked.count };
  const { groups, proven } = search(count, first, apart, asked);
  return { groups, proven, tried: asked.count };
}

/** Every set looked at once; beyond the limit a set counts as one that cannot share. */
class Asked {
  count = 0;
  spent = false;
  readonly #canShare: (group: readonly number[]) => boolean;
  readonly #tries: number;
  readonly #known = new Map<string, boolean>();

  constructor(canShare: (group: readonly number[]) => boolean, tries: number) {
    this.#canShare = canShare;
    this.#tries = tries;
  }

  share(group: readonly number[]): boolean {
    if (group.length < 2) return true;
    const key = [...group].sort((a, b) => a - b).join();
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    if (this.count >= this.#tries) {
      this.spent = true;
      return false;
    }
    this.count += 1;
    const can = this.#canShare(group);
    this.#known.set(key, can);
    return can;
  }
}

function firstFit(count: number, asked: Asked, lastOnly: boolean): readonly (readonly number[])[] {
  const groups: number[][] = [];
  for (let each = 0; each < count; each += 1) {
    const open = (lastOnly ? groups.slice(-1) : groups).find((group) => asked.share([...group, each]));
    if (open) open.push(each);
    else groups.push([each]);
  }
  return groups;
}

/** People of whom no two can share, as many as are found by taking one after the other. */
function noTwoShare(count: number, openers: readonly number[], asked: Asked): readonly number[] {
  const others = Array.from({ length: count }, (_, each) => each).filter((each) => !openers.includes(each));
  const found: number[] = [];
  for (const each of [...openers, ...others]) {
    if (found.every((other) => !asked.share([other, each])) && !asked.spent) found.push(each);
  }
  return found;
}

interface Best {
  readonly groups: readonly (readonly number[])[];
  readonly proven: boolean;
}

/** Tries every way that is better than the best so far; no two of `apart` are ever put together. */
function search(
  count: number,
  first: readonly (readonly number[])[],
  apart: readonly number[],
  asked: Asked,
): Best {
  const rest = Array.from({ length: count }, (_, each) => each).filter((each) => !apart.includes(each));
  let best = first;
  const place = (at: number, groups: readonly (readonly number[])[]): void => {
    if (asked.spent || groups.length >= best.length || best.length === apart.length) return;
    const each = rest[at];
    if (each === undefined) {
      best = groups;
      return;
    }
    groups.forEach((group, g) => {
      const grown = [...group, each];
      if (asked.share(grown))
        place(
          at + 1,
          groups.map((own, i) => (i === g ? grown : own)),
        );
    });
    place(at + 1, [...groups, [each]]);
  };
  place(
    0,
    apart.map((each) => [each]),
  );
  return { groups: best, proven: !asked.spent };
}
