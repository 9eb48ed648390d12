/** Every way to sort all into groups. */
export function partitions<T>(all: readonly T[]): readonly (readonly (readonly T[])[])[] {
  const [first, ...others] = all;
  if (first === undefined) return [[]];
  return partitions(others).flatMap((rest) => [
    [[first], ...rest],
    ...rest.map((group, g) => rest.map((own, i) => (i === g ? [first, ...group] : own))),
  ]);
}
