import type { Sheet } from "../../sheet/sheet.ts";

/** Lines of one sheet that move as one. */
export interface LineGroup {
  /** An adjustable line by itself, a part, or the lines without a part. */
  readonly kind: "line" | "part" | "dish";
  /** The line's key or the part's name; empty for lines without a part. */
  readonly own: string;
  /** By their place in the sheet. */
  readonly lines: readonly number[];
  /** A line that is the same for everyone, freed to see what it would have to be. */
  readonly isDose: boolean;
}

/** A sheet never changes, so it is sorted once for all who eat of it. */
const AS_WRITTEN: WeakMap<Sheet, readonly LineGroup[]> = /* @__PURE__ */ new WeakMap();

/** The lines of a sheet by how they move, `freed` ones each alone. A dose that is not freed is in no group. */
export function lineGroups(s: Sheet, freed: readonly number[]): readonly LineGroup[] {
  if (freed.length > 0) return sorted(s, new Set(freed));
  const found = AS_WRITTEN.get(s) ?? sorted(s, new Set());
  AS_WRITTEN.set(s, found);
  return found;
}

function sorted(s: Sheet, freed: ReadonlySet<number>): LineGroup[] {
  const found = new Map<string, LineGroup & { readonly lines: number[] }>();
  s.plan.lines.forEach(({ line }, i) => {
    const isDose = line.scaling === "per-portion";
    if (isDose && !freed.has(i)) return;
    const alone = line.scaling === "adjustable" || freed.has(i);
    const kind = alone ? "line" : line.part === undefined ? "dish" : "part";
    const own = alone ? line.key : (line.part ?? "");
    const group = found.get(`${kind}:${own}`) ?? { kind, own, isDose, lines: [] };
    group.lines.push(i);
    found.set(`${kind}:${own}`, group);
  });
  return [...found.values()];
}
