import { exactText } from "../../number/digits.ts";
import { type Exact, greatest, isZero, least, minus, ONE, over, times, ZERO } from "../../number/exact.ts";
import { groupBy } from "../../number/groupBy.ts";
import { compareRatios } from "../../number/ratio.ts";
import { type Brought, broughtBy } from "../../scale/engine/brought.ts";
import type { Dish } from "../../scale/engine/model.ts";
import type { ReadDemand, Subject } from "../../scale/engine/readDemand.ts";
import { demandEnds, type HeldEnd } from "../../scale/round/problem.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import type { PotTask, Taster } from "./potTask.ts";

/**
 * Tells what holds for everyone who eats of a pot of so many portions, for one portion of it, all else
 * on their plates as it stands. As it stands the pot is within: it is not made to mend what others cost.
 */
export function potEnds(task: PotTask, dishes: readonly Dish[], exact: readonly Exact[]): readonly HeldEnd[] {
  const { figures, tolerance, group, dish, portions } = task;
  const whole = exact[group.by ?? -1] ?? ZERO;
  if (isZero(whole)) return [];
  const known = new Map<string, Brought>();
  const broughtOf = (subject: Subject): Brought => {
    const key = figures.key(subject);
    const brought = known.get(key) ?? broughtBy(dishes, subject, figures.system);
    known.set(key, brought);
    return brought;
  };
  const inPot = new Set(group.pot);
  const endsFor = ({ standing, factors }: Taster): readonly HeldEnd[] => {
    const own = factors.get(dish) ?? [];
    const share = over(times(own[group.by ?? -1] ?? ZERO, portions), whole);
    if (isZero(share)) return [];
    const ofPot: LineFactors = new Map([[dish, own.map((f, line) => (inPot.has(line) ? f : ZERO))]]);
    return standing.flatMap((demand) => endsOn(demand, { share, factors, ofPot }));
  };
  const endsOn = (demand: ReadDemand, on: OnPlate): readonly HeldEnd[] => {
    const { subject } = demand;
    const [plate, pot] = [figures.at(subject, on.factors), figures.at(subject, on.ofPot)];
    const brought = broughtOf(subject);
    const isQuotient = brought.per !== undefined;
    if (isZero(plate.per) || (isZero(pot.value) && !(isQuotient && !isZero(pot.per)))) return [];
    const now = over(plate.value, plate.per);
    // An amount is told of a portion of the pot; a share or ratio is the same of any.
    const of = isQuotient ? ONE : on.share;
    const beside = {
      value: over(minus(plate.value, pot.value), on.share),
      per: isQuotient ? over(minus(plate.per, pot.per), on.share) : ZERO,
    };
    return demandEnds([{ demand, brought }], tolerance).map((held) => {
      const end = held.side === "least" ? least(held.end, now) : greatest(held.end, now);
      return { ...held, end: over(end, of), asked: over(held.asked, of), beside };
    });
  };
  return tightest(task.tasters.flatMap(endsFor));
}

/** Someone's portion of a pot, in portions of it, with their plate and what of it comes from the pot. */
interface OnPlate {
  readonly share: Exact;
  readonly factors: LineFactors;
  readonly ofPot: LineFactors;
}

/** Leaves out ends that hold wherever others do, and are off by no more where those are. */
function tightest(ends: readonly HeldEnd[]): readonly HeldEnd[] {
  const places = new Map<HeldEnd["brought"], number>();
  // Of an amount, what is beside the pot may be enough.
  const wanting = ends
    .map(alone)
    .filter(({ brought, side, end }) => brought.per || side === "most" || end.n > 0n);
  const groups = groupBy(wanting, ({ brought, side, firm, beside }) => {
    const place = places.get(brought) ?? places.size;
    places.set(brought, place);
    const rest = beside ? `${exactText(beside.value)} ${exactText(beside.per)}` : "";
    return `${place} ${side} ${firm} ${rest}`;
  });
  return [...groups.values()].flatMap((group) => {
    const sign = group[0]?.side === "least" ? -1 : 1;
    const sorted = group.sort(
      (a, b) => sign * compareRatios(a.end, b.end) || compareRatios(a.asked, b.asked),
    );
    let finest: Exact | undefined;
    return sorted.filter(({ asked, firm }) => {
      if (finest && (firm || compareRatios(asked, finest) >= 0)) return false;
      finest = asked;
      return true;
    });
  });
}

/** What counts beside an amount is as well taken off its end. */
function alone(held: HeldEnd): HeldEnd {
  const { brought, end, beside, ...rest } = held;
  return brought.per || !beside ? held : { ...rest, brought, end: minus(end, beside.value) };
}
