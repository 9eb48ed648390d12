import { quote } from "./error.ts";

/** Names longer than this are compared by their beginning. */
const LONGEST = 60;

/**
 * The names most like `name`, nearest first, for a hint after a misspelling: those that begin with
 * it, and those within a third of their length in single-letter edits and swaps of neighbours
 * (optimal string alignment distance). What is no text is near nothing.
 *
 * @example
 * ```ts
 * nearNames("protien", ["protein", "phosphorus"]); // => [ 'protein' ]
 * ```
 */
export function nearNames(name: unknown, names: Iterable<string>, most = 3): string[] {
  if (typeof name !== "string") return [];
  const wanted = name.slice(0, LONGEST).toLowerCase();
  const found: { name: string; distance: number }[] = [];
  for (const each of names) {
    const lower = each.slice(0, LONGEST).toLowerCase();
    const limit = Math.max(1, Math.floor(Math.max(wanted.length, lower.length) / 3));
    const begins = wanted.length > 2 && lower.startsWith(wanted);
    const distance = begins ? 1 : editDistance(wanted, lower, limit);
    if (distance <= limit) found.push({ name: each, distance });
  }
  found.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return found.slice(0, most).map((f) => f.name);
}

/** "did you mean …?" where a near name exists, else the fallback. */
export function didYouMean(name: unknown, names: Iterable<string>, otherwise: string): string {
  const near = nearNames(name, names).map((each) => quote(each).slice(1, -1));
  return near.length > 0 ? `did you mean ${near.join(" or ")}?` : otherwise;
}

/** Optimal string alignment distance, given up (as `limit + 1`) as soon as it must exceed the limit. */
function editDistance(a: string, b: string, limit: number): number {
  const beyond = limit + 1;
  if (Math.abs(a.length - b.length) > limit) return beyond;
  let before = new Uint8Array(b.length + 1);
  let row = new Uint8Array(b.length + 1).map((_, j) => j);
  let next = new Uint8Array(b.length + 1);
  for (let i = 1; i <= a.length; i++) {
    next.fill(beyond);
    if (i <= limit) next[0] = i;
    let nearest = next[0] ?? beyond;
    // A cell further than the limit from the diagonal is beyond it.
    for (let j = Math.max(1, i - limit); j <= Math.min(b.length, i + limit); j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const here = Math.min(
        (row[j - 1] ?? beyond) + (same ? 0 : 1),
        (row[j] ?? beyond) + 1,
        (next[j - 1] ?? beyond) + 1,
        swapped ? (before[j - 2] ?? beyond) + 1 : beyond,
        beyond,
      );
      next[j] = here;
      nearest = Math.min(nearest, here);
    }
    if (nearest > limit) return beyond;
    [before, row, next] = [row, next, before];
  }
  return row[b.length] ?? beyond;
}
