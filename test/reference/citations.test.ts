import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { intakeTables } from "../../src/person/intakes/figures.ts";
import { labelTables } from "../../src/person/intakes/labelReference.ts";
import type { IntakeRow } from "../../src/person/intakes/table.ts";
import { energyRanges } from "../../src/person/ranges/all.ts";

/** A published figure: one cell of a table, an addition to it, or a range. */
interface Figure {
  readonly of: string;
  /** Whom it is for, and how it is printed. */
  readonly text: string;
  readonly source: string;
  readonly check: string;
}

function figuresOf(row: IntakeRow, source: string, stages: readonly string[] = []): Figure[] {
  const printed = row.values.split(" ").map((value, i) => [stages[i] ?? "", value] as const);
  const { pregnant, breastfeeding } = row.adds ?? {};
  const added = [
    ["adds pregnant", pregnant] as const,
    ["adds breastfeeding", breastfeeding] as const,
  ].flatMap(([name, value]) => (value === undefined ? [] : [[name, Object.values(value).join("")] as const]));
  return [...printed.filter(([, value]) => /\d/.test(value)), ...added].map(([who, value]) => ({
    of: `${row.of.join(" + ")}${"kind" in row ? `, ${row.kind}` : ""}${row.basis ? ` (${row.basis})` : ""}`,
    text: `${who} ${value}`.trim(),
    source: row.source ?? source,
    check: !row.seen || row.seen.some((seen) => seen === who) ? row.check : "unverified",
  }));
}

const byAuthority: { readonly [name: string]: readonly Figure[] } = {
  ...Object.fromEntries(
    Object.entries(intakeTables).map(([authority, tables]) => [
      authority,
      tables.flatMap(({ references = [], uppers = [], source, stages }) =>
        [...references, ...uppers].flatMap((row) => figuresOf(row, source, stages)),
      ),
    ]),
  ),
  ...Object.fromEntries(
    Object.entries(labelTables).map(([authority, { references, source }]) => [
      `label ${authority}`,
      references.flatMap((row) => figuresOf(row, source)),
    ]),
  ),
  ...Object.fromEntries(
    Object.entries(energyRanges).map(([authority, ranges]) => [
      `shares of energy ${authority}`,
      ranges.map(({ of, least = "", most = "", from, source, check }) => ({
        of,
        text: `from ${from} years ${least}-${most} %`,
        source,
        check,
      })),
    ]),
  ),
};
const all = Object.values(byAuthority).flat();

/** The figures that nobody has read yet, a line for each authority. */
function unreadLines(): string[] {
  return Object.entries(byAuthority).flatMap(([name, figures]) => {
    const unread = new Map<string, string[]>();
    for (const { of, text, check } of figures)
      if (check === "unverified") unread.set(of, [...(unread.get(of) ?? []), text]);
    const said = [...unread].map(([of, texts]) => `${of}: ${texts.join(", ")}`);
    return said.length > 0 ? [`- ${name}: ${said.join("; ")}`] : [];
  });
}

describe("every published reference figure", () => {
  it("cites a document and its year", () => {
    expect(all.length).toBeGreaterThan(2100);
    for (const { of, text, source } of all) {
      expect(source, `${of} ${text}`).toMatch(/[A-Za-z]{3}.{8,}/);
      expect(source, `${of} ${text}`).toMatch(/\b(?:19|20)\d\d\b/);
      expect(source, `${of} ${text}`).not.toMatch(/https?:|www\./);
    }
  });

  it("says how it was checked, and one in twenty at most was not read", () => {
    const share = (figures: readonly Figure[], check: string): string =>
      `${((100 * figures.filter((f) => f.check === check).length) / figures.length).toFixed(1)} % ${check}`;
    const told = ([name, figures]: readonly [string, readonly Figure[]]): string =>
      `${name}: ${figures.length} figures, ${["issuer", "copy", "unverified"].map((c) => share(figures, c)).join(", ")}`;
    const held = Object.entries(byAuthority).filter(([, figures]) => figures.length > 0);
    console.log([...held, ["all", all] as const].map(told).join("\n"));
    for (const { of, check } of all) expect(["issuer", "copy", "unverified"], of).toContain(check);
    expect(all.filter(({ check }) => check === "unverified").length / all.length).toBeLessThan(0.05);
  });

  it("is named in DEVELOPERS.md where it was not read", () => {
    const page = readFileSync(new URL("../../DEVELOPERS.md", import.meta.url), "utf8");
    const section = page.split("## Figures that were not read")[1]?.split("\n## ")[0] ?? "";
    const listed = section.split("\n").filter((line) => line.startsWith("- "));
    expect(listed).toEqual(unreadLines());
  });
});
