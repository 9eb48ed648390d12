/** Words that stood between readers and what a page says, each beside what stands there now. */
export const stumbles: readonly RegExp[] = [
  /\bwhat it brings\b/i, // nutrients per portion
  /\bsilent on\b/i, // no iodine data: …
  /\bpresumed\b/i, // assumed to contain none
  /\bdrifts? by\b|what measurable amounts cost/i, // effect of rounding to kitchen measures
  /\bworst of\b/i, // largest ratio change
  /lines that are the same for everyone, against/i, // fixed doses against daily upper levels
  /\bweighs most on\b/i, // closest to the limit
  /\bno level:|none is held here/i, // no upper level available
  /\bto heed\b|\bwho says so\b/i, // cautions, source
  /\bThere +Used +Left\b/, // in stock, use, remaining
  /what is not eaten of it/i, // weight includes peel and trimmings
  /the most for a slight adult/i, // at most about 2 g a day at 60 kg
  /for the size of the dish|what would open/i, // against the dish's factor, ways to make it possible
  /\bwhose spoon/i, // cups and spoons differ
  /\ba day's or more\b/i, // at or above the reference
  /\bnot proven under\b/i, // cannot be shown to be below it
  /an empty place/i, // a blank is not a guarantee
  /every figure is exact/i, // every calculation is exact
  /\bas sold\b/i, // goes without saying
];
