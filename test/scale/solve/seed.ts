/**
 * The seed of a random run, printed so that a run can be repeated: the same every time unless
 * STEELYARD_SEED says otherwise.
 */
export function seedFor(name: string, usual: number): number {
  const seed = Number(process.env.STEELYARD_SEED ?? usual);
  console.info(`${name}: seed ${seed}`);
  return seed;
}
