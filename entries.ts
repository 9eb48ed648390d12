import manifest from "./package.json" with { type: "json" };

/** A door of the package. */
export interface Entry {
  /** As users import it: `steelyard/foods`. */
  readonly name: string;
  /** Its file in `src`, and in `dist`, without extension: `foods`. */
  readonly file: string;
}

/** Every entry that package.json exports: the one list of them. `./foods` is built from `src/foods.ts`. */
export const entries: readonly Entry[] = Object.keys(manifest.exports)
  .filter((path) => !path.endsWith(".json"))
  .map((path) => ({ name: `steelyard${path.slice(1)}`, file: path === "." ? "index" : path.slice(2) }));
