import type { EnergyShares } from "../sheet/energy.ts";
import { pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** The energy of the batch, what each constituent brings of it, its exact share and its whole per cent. */
export function energyTidy(e: EnergyShares, asked: Asked): Tidy {
  return tidyOf(
    asked,
    ["system"],
    () => energyRows(e),
    e.shares.map(({ of }) => of),
  );
}

function* energyRows({ system, source, energy, kilojoules, shares }: EnergyShares): Generator<TidyRow> {
  const head: TidyRow = { row: "total", source, own: { system } };
  yield { ...head, what: "energy", component: "energy", ...tallyRow(energy) };
  if (kilojoules) yield { ...head, what: "energy", component: "energy", ...tallyRow(kilojoules) };
  for (const { of, energy: own, share, percent } of shares) {
    const row = { ...head, component: of };
    yield { ...row, what: "energy", ...tallyRow(own) };
    const isKnown = energy.bound === "point" && own.bound === "point";
    // Of what is not all known the share is one of what is known, and bounds nothing.
    yield isKnown
      ? { ...row, what: "share", ...pointRow(share, "") }
      : {
          ...row,
          what: "share-of-known",
          amount: own.bound === "unknown" ? undefined : share,
          unit: "",
          bound: "unknown",
        };
    yield { ...row, what: "percent", ...pointRow({ n: BigInt(percent), d: 1n }, "%") };
  }
}
