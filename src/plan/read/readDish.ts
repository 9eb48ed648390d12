import { number, thing } from "../../document/leaves.ts";
import { isRecord } from "../../document/safe.ts";
import { andThen, byName, choice, fields, once, optional, type Schema } from "../../document/schema.ts";
import type { Exact } from "../../number/exact.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { checkName } from "./name.ts";

/** A dish, read. */
export interface ReadDish {
  /** As it was handed in, or as an answer changed it. */
  readonly written: Sheet;
  /** Grams per millilitre. */
  readonly density: Exact | undefined;
}

/** The schema of a meal's dishes: a sheet by itself, or dishes by name. */
export const planDishesSchema: () => Schema<Sheet | ReadonlyMap<string, ReadDish>> = /* @__PURE__ */ once(
  () => {
    const sheet = thing("a sheet, made with sheet(recipe, foods)", isSheet);
    const plain = andThen(sheet, (written): ReadDish => ({ written, density: undefined }));
    const full = andThen(
      fields<{ readonly sheet: Sheet; readonly density?: Exact }>({
        sheet,
        density: optional(number({ above: 0 })),
      }),
      ({ sheet, density }): ReadDish => ({ written: sheet, density }),
    );
    const dish = choice([plain, full], (given) => (isRecord(given) ? full : plain), "a sheet");
    const several = andThen(byName(dish, { check: checkName, like: "{ pot, shot }" }), (dishes, refuse) => {
      const all = new Map(Object.entries(dishes));
      if (all.size === 0) refuse("a meal without dishes", `give ${DISHES}`);
      return all;
    });
    return choice<Sheet | ReadonlyMap<string, ReadDish>>(
      [sheet, several],
      (given) => (isSheet(given) ? sheet : isRecord(given) ? several : undefined),
      DISHES,
    );
  },
);

const DISHES = "a sheet, or sheets by name: { pot, shot }";

function isSheet(given: unknown): given is Sheet {
  return given instanceof Sheet;
}
