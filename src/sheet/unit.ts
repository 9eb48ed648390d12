/** A unit's text taken apart: `g·GBP/kcal` has two factors above the line and one below. */
interface UnitParts {
  readonly above: readonly string[];
  readonly below: readonly string[];
}

function partsOf(unit: string): UnitParts {
  const [above = "", ...below] = unit.split("/");
  const factors = (text: string): string[] => text.split("·").filter((u) => u !== "" && u !== "1");
  return { above: factors(above), below: below.flatMap(factors) };
}

/** The unit of a product: what stands above the line in one and below it in the other cancels. */
export function unitOfProduct(a: string, b: string): string {
  if (a === "" || b === "") return a === "" ? b : a;
  const [x, y] = [partsOf(a), partsOf(b)];
  return cancelled({ above: [...x.above, ...y.above], below: [...x.below, ...y.below] });
}

/** The unit of a quotient; of like units the result is a plain number. */
export function unitOfQuotient(a: string, b: string): string {
  if (b === "") return a;
  if (a === b) return "";
  const [x, y] = [partsOf(a), partsOf(b)];
  return cancelled({ above: [...x.above, ...y.below], below: [...x.below, ...y.above] });
}

function cancelled({ above, below }: UnitParts): string {
  const kept = [...below];
  const left = above.filter((unit) => {
    const at = kept.indexOf(unit);
    if (at < 0) return true;
    kept.splice(at, 1);
    return false;
  });
  if (kept.length === 0) return left.join("·");
  return [left.length === 0 ? "1" : left.join("·"), ...kept].join("/");
}
