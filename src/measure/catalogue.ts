import convert from "convert-units";
import { exact } from "../number/fraction.ts";
import type { baseUnit, Unit, UnitKind } from "./units.ts";

/** Names of the catalogue's units that another spelling rule has to judge first: short tons. */
const left: readonly string[] = ["t"];

/** The catalogue's own names of our base units. */
const base = { mass: "g", volume: "ml", energy: "kJ" } as const satisfies typeof baseUnit;

/** Float noise beyond this many digits is cut from a factor; the catalogue states fewer. */
const DIGITS = 12;

let units: ReadonlyMap<string, Unit> | undefined;

/**
 * A unit of mass, volume or energy that our own table does not have, by its exact symbol in the
 * catalogue (`in3`, `kkp`, `Wh`). Its factor is the catalogue's decimal text taken exactly: true to
 * the digits that the catalogue gives, six for those that are not metric.
 *
 * Source: convert-units 2.3.4.
 */
export function catalogueUnit(symbol: string): Unit | undefined {
  units ??= makeUnits();
  return units.get(symbol);
}

/** Every symbol of the catalogue. */
export function catalogueSymbols(): readonly string[] {
  units ??= makeUnits();
  return [...units.keys()];
}

function makeUnits(): ReadonlyMap<string, Unit> {
  const kinds: readonly UnitKind[] = ["mass", "volume", "energy"];
  const entries = kinds.flatMap((kind) =>
    convert()
      .list(kind)
      .filter(({ abbr }) => !left.includes(abbr))
      .map(({ abbr }): [string, Unit] => {
        const factor = convert(1).from(abbr).to(base[kind]);
        return [abbr, Object.freeze({ id: abbr, kind, size: exact(factor.toPrecision(DIGITS)) })];
      }),
  );
  return new Map(entries);
}
