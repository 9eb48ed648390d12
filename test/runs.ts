/**
 * How many random cases are drawn, and from which seed: of what a test names, `npm test` draws the same few every
 * time, and `npm run test:long` `STEELYARD_RUNS` times as many, from the seed that it prints.
 */
const times = Number(process.env.STEELYARD_RUNS ?? 1);

/** Whether this is the long run, in which every slow case is tried. */
export const isLong: boolean = times > 1;

/** How many runs a property gets that is to have so many. */
export function runs(usual: number): number {
  return Math.max(1, Math.ceil(usual * times));
}

/** Of what a random run has to come upon so often in the usual number of runs, how often at least in this one. */
export function met(usual: number): number {
  return times < 1 ? Math.floor(usual * times * 0.8) : usual;
}

/** The seed of a random run of its own, printed so that it can be repeated: `STEELYARD_SEED`, or the usual one. */
export function seedFor(name: string, usual: number): number {
  const seed = Number(process.env.STEELYARD_SEED ?? usual);
  console.info(`${name}: seed ${seed}`);
  return seed;
}
