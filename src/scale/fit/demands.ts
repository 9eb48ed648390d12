import { figureWritten, flag, word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import {
  andThen,
  asFar,
  attemptAt,
  coded,
  fields,
  list,
  once,
  optional,
  type Refuse,
  type Schema,
} from "../../document/schema.ts";
import { componentIds } from "../../food/components.ts";
import { wholeNumber } from "../../measure/amountData.ts";
import { figure, hinting } from "../../measure/figure.ts";
import { readShare, share } from "../../measure/share.ts";
import { fault, quote } from "../../number/error.ts";
import { type Exact, exact, type Value } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Demand, EnergyShareOf, Quantity } from "../demand.ts";
import { countedIn } from "../engine/highEnds.ts";
import { confidences, type Margin, standardErrors } from "../engine/margin.ts";
import type { ReadDemand, Subject } from "../engine/readDemand.ts";
import { unitOf } from "../linear.ts";
import { quantity } from "../quantity.ts";

/** More than any person asks, and few enough for every machine. */
const MOST_DEMANDS = 500;

const SUBJECTS = ["of", "energyShareOf", "ratioOf"] as const;
const AMOUNTS = ["exactly", "least", "most"] as const;
const SHARES: readonly EnergyShareOf[] = [
  "protein",
  "fat",
  "carbohydrate",
  "saturatedFat",
  "addedSugars",
  "fibre",
  "alcohol",
];

/**
 * Reads demands, in an order of their own, so that what follows does not mind the caller's.
 *
 * Throws `demand-malformed`, all faults at once, each path beginning with the demand's place in the list.
 */
export function readDemands(input: unknown): readonly ReadDemand[] {
  return read(demandsSchema(), input, "demand-malformed");
}

/** The schema of a list of demands, read in an order of their own. */
export const demandsSchema: () => Schema<readonly ReadDemand[]> = /* @__PURE__ */ once(() => {
  const all = list(demandSchema(), { most: MOST_DEMANDS, like: '[{ of: "energy", exactly: "650 kcal" }]' });
  return coded(
    "demand-malformed",
    andThen(all, (read) => [...read].sort(byMeaning)),
  );
});

/** A demand's fields as they are read. */
interface DemandFields {
  readonly of?: Quantity;
  readonly energyShareOf?: EnergyShareOf;
  readonly ratioOf?: readonly [Quantity, Quantity];
  readonly exactly?: Value;
  readonly least?: Value;
  readonly most?: Value;
  readonly firm?: boolean;
  readonly confidence?: Exact;
}

/** The schema of a demand. */
export const demandSchema: () => Schema<ReadDemand> = /* @__PURE__ */ once(() =>
  asFar(
    fields<DemandFields>({
      of: optional(quantity()),
      energyShareOf: optional(word(SHARES)),
      ratioOf: optional(ratio()),
      exactly: optional(figureWritten()),
      least: optional(figureWritten()),
      most: optional(figureWritten()),
      firm: optional(flag()),
      confidence: optional(share()),
    }),
    (read, refuse, given) => demandOf(read, refuse, given as Demand),
  ),
);

function ratio(): Schema<readonly [Quantity, Quantity]> {
  return andThen(
    list(quantity(), { least: 2, most: 2, like: '["omega6", "omega3"]' }),
    ([of, to], refuse) => {
      if (of === to) refuse(`a ratio of ${quote(of)} with itself`, "it is always 1; name another");
      return [of, to] as [Quantity, Quantity];
    },
  );
}

function demandOf(read: DemandFields, refuse: Refuse, demand: Demand): ReadDemand {
  const subject = subjectOf(read, refuse, demand);
  const ends = endsOf(read, subject, refuse, demand);
  const firm = read.firm === true;
  const margin = marginOf(read, subject, refuse);
  const counted = subject && countedIn({ firm, ...ends }, subject, margin);
  return { demand, subject: counted as Subject, ...ends, firm };
}

/** How sure the one end of a demand on an amount is to be. */
function marginOf(
  { confidence, exactly, least, most }: DemandFields,
  subject: Subject | undefined,
  refuse: Refuse,
): Margin | undefined {
  if (confidence === undefined) return undefined;
  const wrong = (message: string, hint: string): undefined =>
    refuse(message, hint, ["confidence"]) as undefined;
  if (subject && (subject.kind !== "amount" || subject.of === "mass" || subject.of === "water"))
    return wrong("a confidence of what is no component of foods", 'ask it of an amount: { of: "iron", … }');
  if (exactly !== undefined || (least !== undefined && most !== undefined))
    return wrong("a confidence of more than one end", "write one demand for the least and one for the most");
  if (!standardErrors(confidence))
    return wrong("a confidence that is not in the table", `write one of ${confidences.join(", ")}`);
  return { side: least === undefined ? "most" : "least", confidence };
}

function subjectOf(
  { of, energyShareOf, ratioOf }: DemandFields,
  refuse: Refuse,
  demand: Demand,
): Subject | undefined {
  const [first, second] = SUBJECTS.filter((field) => demand[field] !== undefined);
  if (first === undefined)
    refuse(
      "the demand does not say what it is about",
      'name a component or the mass: { of: "protein", … }, or energyShareOf, or ratioOf',
    );
  if (second !== undefined) {
    refuse(`both ${first} and ${second}`, "write two demands", [second]);
    return undefined;
  }
  if (of) return { kind: "amount", of };
  if (energyShareOf) return { kind: "share", of: energyShareOf };
  return ratioOf && { kind: "ratio", of: ratioOf };
}

function endsOf(
  read: DemandFields,
  subject: Subject | undefined,
  refuse: Refuse,
  demand: Demand,
): { least: Exact | undefined; most: Exact | undefined } {
  const [first, other] = AMOUNTS.filter((field) => demand[field] !== undefined);
  if (first === undefined)
    refuse("the demand does not say how much", 'write exactly, least or most: least: "30 g"');
  if (first === "exactly" && other !== undefined)
    refuse(`both exactly and ${other}`, "write exactly alone, or least and most", [other]);
  const [exactly, least, most] = AMOUNTS.map((field) => {
    const value = read[field];
    if (!subject || value === undefined) return undefined;
    // Whatever a reader says of a figure, here it is a demand that is malformed.
    const refuseHere: Refuse = (message, hint) => refuse(message, hint, [field]);
    return attemptAt(refuseHere, [], () => amountOf(value, subject));
  });
  if (least && most && compareRatios(least, most) > 0)
    refuse(`least ${quote(read.least)} is above most ${quote(read.most)}`, "swap them", ["most"]);
  return exactly ? { least: exactly, most: exactly } : { least: least && unlessNothing(least), most };
}

/** A least that asks for something, else undefined. */
function unlessNothing(least: Exact): Exact | undefined {
  return least.n === 0n ? undefined : least;
}

function amountOf(value: Value, subject: Subject): Exact {
  if (subject.kind === "amount") return figure(value, unitOf(subject.of));
  if (subject.kind === "share") return readShare(value, "demand-malformed");
  const read = hinting("write a number: 4", () =>
    typeof value === "string" ? wholeNumber(value) : exact(value),
  );
  if (read.n >= 0n) return read;
  throw fault("demand-malformed", `${quote(value)} is below 0`, "give 0 or more");
}

/** Amounts first, in the order of the components, then shares, then ratios; limits before figures. */
function byMeaning(a: ReadDemand, b: ReadDemand): number {
  const [left, right] = [rank(a.subject), rank(b.subject)];
  for (let i = 0; i < left.length; i += 1) {
    const difference = (left[i] as number) - (right[i] as number);
    if (difference !== 0) return difference;
  }
  const sure = ({ subject }: ReadDemand): Exact | undefined =>
    subject.kind === "amount" ? subject.margin?.confidence : undefined;
  return (
    compareEnds(a.least, b.least) ||
    compareEnds(a.most, b.most) ||
    Number(b.firm) - Number(a.firm) ||
    compareEnds(sure(a), sure(b))
  );
}

function rank({ kind, of }: Subject): readonly [number, number, number] {
  if (kind === "amount") return [0, quantityRank(of), 0];
  if (kind === "share") return [1, SHARES.indexOf(of), 0];
  return [2, quantityRank(of[0]), quantityRank(of[1])];
}

function quantityRank(of: Quantity): number {
  return of === "mass" ? -1 : componentIds.indexOf(of);
}

function compareEnds(a: Exact | undefined, b: Exact | undefined): number {
  if (a && b) return compareRatios(a, b);
  return a === b ? 0 : a ? 1 : -1;
}
