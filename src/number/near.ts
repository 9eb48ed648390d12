/**
 * The names most like `name`, nearest first, for a hint after a misspelling. Only names within a
 * third of their length in single-letter edits (Levenshtein distance) count.
 */
export function nearNames(name: string, names: Iterable<string>, most = 3): string[] {
  const wanted = name.slice(0, 60).toLowerCase();
  const found: { name: string; distance: number }[] = [];
  for (const each of names) {
    if (Math.abs(each.length - wanted.length) > 20) continue;
    const lower = each.toLowerCase();
    const distance = lower.startsWith(wanted) && wanted.length > 2 ? 1 : editDistance(wanted, lower);
    if (distance <= Math.max(1, Math.floor(Math.max(wanted.length, each.length) / 3)))
      found.push({ name: each, distance });
  }
  found.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1));
  return found.slice(0, most).map((f) => f.name);
}

/** "did you mean …?" where a near name exists, else the fallback. */
export function didYouMean(name: string, names: Iterable<string>, otherwise: string): string {
  const near = nearNames(name, names);
  return near.length > 0 ? `did you mean ${near.join(" or ")}?` : otherwise;
}

function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const substituted = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(substituted, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
