import type { ReadAmount, ReadLine, StatedAmount } from "./readLine.ts";

/** What of a line is written. */
export type LineWords = Pick<
  ReadLine,
  "amounts" | "food" | "state" | "preparation" | "optional" | "alternatives" | "note"
>;

/**
 * Writes a line out, so that reading it again gives the same line: amount, state, food, what is done to
 * it, and in brackets what may stand instead and what is noted.
 */
export function writeLine(line: LineWords): string {
  const [amount] = line.amounts;
  const part = amount?.unit ? /^(\p{L}+) (juice|zest|rind|peel)$/u.exec(line.food) : null;
  // "juice of 1 lemon" is measured in lemons.
  if (amount && part && part[1] === amount.unit)
    return `${part[2]} of ${writeLine({ ...line, amounts: [{ ...amount, unit: null }], food: part[1] ?? "" })}`;
  const [first, ...others] = line.amounts.map(amountText);
  const same = others.map((each) => ` / ${each}`).join("");
  const food = [...line.state, line.food].join(" ");
  return [
    line.optional ? "(optional) " : "",
    first === undefined ? "" : `${first}${same} `,
    food,
    ...line.preparation.map((each) => `, ${each}`),
    ...line.alternatives.map((each) => ` (or ${each})`),
    line.note === "" ? "" : ` (note: ${line.note})`,
  ].join("");
}

function amountText(amount: ReadAmount): string {
  const { each, plus, approximate } = amount;
  const about = approximate ? "about " : "";
  if (each)
    return `${about}${figure(amount)} x ${stated(each)}${amount.unit === null ? "" : ` ${amount.unit}`}`;
  return `${about}${stated(amount)}${plus ? ` + ${stated(plus)}` : ""}`;
}

function stated(amount: StatedAmount): string {
  return amount.unit === null ? figure(amount) : `${figure(amount)} ${amount.unit}`;
}

function figure({ least, most }: StatedAmount): string {
  return least === most ? least : `${least} to ${most}`;
}
