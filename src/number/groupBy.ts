/** Sorts things into groups by a key, each group and what is in it in the order that they came. */
export function groupBy<T, Key>(all: Iterable<T>, key: (each: T) => Key): Map<Key, T[]> {
  const groups = new Map<Key, T[]>();
  for (const each of all) {
    const of = key(each);
    const group = groups.get(of);
    if (group) group.push(each);
    else groups.set(of, [each]);
  }
  return groups;
}
