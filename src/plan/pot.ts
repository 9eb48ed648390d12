import { type Exact, equals, fraction, isZero, minus, ONE, over, sum, times, ZERO } from "../number/exact.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { potTotals } from "./share/batch.ts";
import type { Eater, EaterGroup } from "./share/groups.ts";
import { withLineAmounts } from "./share/lines.ts";
import type { PartServing, Pot, PotRatio } from "./share/parts.ts";
import { PotServing, Subsets } from "./share/serving.ts";
import { potGroups } from "./share/whoSharesAPot.ts";

/** A dish, apart into what is cooked once and what is added person by person. */
export interface Parted {
  readonly groups: readonly EaterGroup[];
  readonly pots: readonly Pot[];
  readonly servings: readonly PartServing[];
}

/**
 * Parts a dish; `base` is one portion as written, `density` in g/ml of the pot as cooked. `settled`
 * groups stay together as they are.
 */
export function partDish(
  base: Sheet,
  eaters: readonly Eater[],
  density: Exact | undefined,
  settled?: readonly EaterGroup[],
): Parted {
  const groups = settled ?? potGroups(base, eaters);
  const subsets = new Subsets(base);
  const parted = groups.map((group) => partGroup(base, group, subsets, density));
  const order = new Map(eaters.map(({ person }, i) => [person, i]));
  const place = ({ person }: PartServing): number => order.get(person) ?? 0;
  return {
    groups,
    pots: parted.flatMap(({ pot }) => pot ?? []),
    servings: parted.flatMap(({ servings }) => servings).sort((a, b) => place(a) - place(b)),
  };
}

function partGroup(
  base: Sheet,
  group: EaterGroup,
  subsets: Subsets,
  density: Exact | undefined,
): { readonly pot: Pot | undefined; readonly servings: readonly PartServing[] } {
  const { eaters, by } = group;
  const pot = by === undefined ? undefined : potOf(base, group, subsets);
  const shared = (eater: Eater): Exact => (by === undefined ? ZERO : (eater.factors[by] ?? ZERO));
  const whole = sum(eaters.map(shared));
  const cooked = pot?.sheet.masses.cooked ?? ZERO;
  const served = minus(ONE, group.measured?.left ?? ZERO);
  return {
    pot,
    servings: eaters.map((eater) => {
      const share = isZero(whole) ? ZERO : over(times(shared(eater), served), whole);
      return new PotServing({ eater, base, group, subsets, pot, share, cooked, density });
    }),
  };
}

function potOf(base: Sheet, group: EaterGroup, subsets: Subsets): Pot {
  const { eaters, pot: lines, measured } = group;
  const totals = potTotals(group, base.plan.lines.length);
  const factors = lines.map((line) => totals[line] ?? ZERO);
  const sheet = withLineAmounts(
    moveLines(subsets.get(lines), factors, fraction(BigInt(eaters.length))),
    measured && lines.map((line) => measured.amounts[line]),
  );
  return {
    sheet,
    people: eaters.map(({ person }) => person),
    left: times(sheet.masses.cooked, measured?.left ?? ZERO),
    ratios: ratiosOf(base, measured?.before ?? eaters),
    notes: measured?.notes ?? [],
  };
}

/** Held lines by how they left the first line of the base; whoever shares a pot has left it alike. */
function ratiosOf(base: Sheet, eaters: readonly Eater[]): readonly PotRatio[] {
  const held = base.plan.lines.flatMap(({ line }, i) =>
    line.added === "cooking" && line.scaling === "held" && !eaters[0]?.lacks?.has(i)
      ? [{ line, factor: eaters[0]?.factors[i] ?? ZERO }]
      : [],
  );
  const to = held.find(({ line, factor }) => line.part === undefined && !isZero(factor)) ?? held[0];
  if (!to || isZero(to.factor)) return [];
  const moved = new Map<string, PotRatio>();
  for (const { line, factor } of held) {
    const ratio = over(factor, to.factor);
    if (equals(ratio, ONE)) continue;
    const part = line.part ?? line.key;
    const lines = [...(moved.get(part)?.lines ?? []), line.key];
    moved.set(part, { part, lines, ratio });
  }
  return [...moved.values()];
}
