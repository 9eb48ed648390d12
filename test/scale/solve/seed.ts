/**
 * The seed of a random run, printed so that a run can be repeated: the same every time unless
 * STEELYARD_SEED says otherwise.
 */
export function seedFor(name: string, usual: number): number {
  const seed = Number(process.env.STEELYARD_SEED ?? usual);
  console.info(`${name}: seed ${seed}`);
  return seed;
}

/**
 * How many of so many random runs are made: a tenth, or the share that STEELYARD_RUNS says, 1 for all.
 */
export function runsOf(all: number): number {
  return Math.ceil(all * Number(process.env.STEELYARD_RUNS ?? 0.1));
}
