import { strToU8, zipSync } from "../fflate.ts";
import { cellName, columnName, type Look, type Page, type PageCell, quotedName } from "./page.ts";
import { cellText, xmlText } from "./xmlText.ts";

/**
 * Writes pages as an Office Open XML package. The same pages give the same bytes.
 *
 * Source: ISO/IEC 29500-1, SpreadsheetML, and 29500-2, packages; read in part in a copy of the first
 * edition, in part from memory.
 */
export function packPages(pages: readonly Page[]): Uint8Array {
  const sheets = pages.map((page, i) => [`xl/worksheets/sheet${i + 1}.xml`, worksheet(page)] as const);
  const parts: readonly (readonly [string, string])[] = [
    ["[Content_Types].xml", contentTypes(pages.length)],
    ["_rels/.rels", relationships([["officeDocument", "xl/workbook.xml"]])],
    ["xl/workbook.xml", workbookPart(pages)],
    [
      "xl/_rels/workbook.xml.rels",
      relationships([
        ...pages.map((_, i) => ["worksheet", `worksheets/sheet${i + 1}.xml`] as const),
        ["styles", "styles.xml"],
      ]),
    ],
    ["xl/styles.xml", styles()],
    ...sheets,
  ];
  return zipSync(Object.fromEntries(parts.map(([name, text]) => [name, strToU8(`${DECLARATION}${text}`)])), {
    mtime: "1980-01-01T00:00:00",
  });
}

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const DOCUMENT = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml";

function contentTypes(count: number): string {
  const override = (part: string, type: string): string =>
    `<Override PartName="/xl/${part}" ContentType="${CONTENT}.${type}+xml"/>`;
  const sheets = Array.from({ length: count }, (_, i) =>
    override(`worksheets/sheet${i + 1}.xml`, "worksheet"),
  );
  return [
    `<Types xmlns="${PACKAGE}/content-types">`,
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    '<Default Extension="xml" ContentType="application/xml"/>',
    override("workbook.xml", "sheet.main"),
    ...sheets,
    override("styles.xml", "styles"),
    "</Types>",
  ].join("");
}

function relationships(of: readonly (readonly [string, string])[]): string {
  const each = of.map(
    ([type, target], i) => `<Relationship Id="rId${i + 1}" Type="${DOCUMENT}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${PACKAGE}/relationships">${each.join("")}</Relationships>`;
}

function workbookPart(pages: readonly Page[]): string {
  const sheets = pages.map(
    ({ name }, i) => `<sheet name="${xmlText(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`,
  );
  const names = pages.flatMap(({ name, rows, heading }, i) => {
    const at = xmlText(quotedName(name));
    const width = Math.max(1, ...rows.map((row) => row.length));
    const area = `${at}!$A$1:${cellName(Math.max(1, rows.length) - 1, width - 1, true)}`;
    const columns = heading.columns > 0 ? [`${at}!$A:$${columnName(heading.columns - 1)}`] : [];
    const titles = [...columns, ...(heading.rows > 0 ? [`${at}!$1:$${heading.rows}`] : [])].join(",");
    const defined = (what: string, where: string): string =>
      `<definedName name="_xlnm.${what}" localSheetId="${i}">${where}</definedName>`;
    return [defined("Print_Area", area), ...(titles === "" ? [] : [defined("Print_Titles", titles)])];
  });
  return [
    `<workbook xmlns="${MAIN}" xmlns:r="${DOCUMENT}"><bookViews><workbookView/></bookViews>`,
    `<sheets>${sheets.join("")}</sheets><definedNames>${names.join("")}</definedNames>`,
    '<calcPr calcId="0" fullCalcOnLoad="1"/></workbook>',
  ].join("");
}

function worksheet({ rows, widths, otherWidth, heading }: Page): string {
  const width = Math.max(1, ...rows.map((row) => row.length));
  const columns = Array.from({ length: width }, (_, i) => {
    const size = (widths[i] ?? otherWidth) + 0.7;
    return `<col min="${i + 1}" max="${i + 1}" width="${size}" customWidth="1"/>`;
  });
  const data = rows.map((row, i) => {
    const cells = row.map((cell, j) => cellXml(cell, cellName(i, j))).join("");
    return cells === "" ? "" : `<row r="${i + 1}">${cells}</row>`;
  });
  return [
    `<worksheet xmlns="${MAIN}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>`,
    `<sheetViews><sheetView workbookViewId="0">${pane(heading)}</sheetView></sheetViews>`,
    `<sheetFormatPr defaultRowHeight="15"/><cols>${columns.join("")}</cols>`,
    `<sheetData>${data.join("")}</sheetData>`,
    '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>',
    '<pageSetup paperSize="9" orientation="landscape" fitToWidth="1" fitToHeight="0"/></worksheet>',
  ].join("");
}

function pane({ rows, columns }: Page["heading"]): string {
  if (rows === 0 && columns === 0) return "";
  const split = [columns > 0 ? ` xSplit="${columns}"` : "", rows > 0 ? ` ySplit="${rows}"` : ""].join("");
  const active = rows > 0 && columns > 0 ? "bottomRight" : rows > 0 ? "bottomLeft" : "topRight";
  return `<pane${split} topLeftCell="${cellName(rows, columns)}" activePane="${active}" state="frozen"/>`;
}

function cellXml(cell: PageCell, at: string): string {
  if (cell === undefined) return "";
  const look = cell.look ?? ("text" in cell ? "text" : "figure");
  const open = `<c r="${at}" s="${LOOKS.indexOf(look)}"`;
  if ("text" in cell)
    return `${open} t="inlineStr"><is><t xml:space="preserve">${cellText(cell.text)}</t></is></c>`;
  const { value } = cell;
  const formula = "formula" in cell ? `<f>${xmlText(cell.formula)}</f>` : "";
  if (typeof value === "string") return `${open} t="str">${formula}<v>${cellText(value)}</v></c>`;
  return `${open}>${formula}<v>${value.toNumber()}</v></c>`;
}

const LOOKS: readonly Look[] = ["text", "figure", "heading", "title", "total", "totalText", "input"];

/** Text is marked as text, so that it stays so when somebody edits it. */
function styles(): string {
  const xf = (of: {
    format?: number;
    font?: number;
    fill?: number;
    text?: boolean;
    wrap?: boolean;
  }): string => {
    const { format = 0, font = 0, fill = 0, text = false, wrap = false } = of;
    const head = `<xf numFmtId="${format}" fontId="${font}" fillId="${fill}" borderId="0" xfId="0"`;
    const applied = `${format > 0 ? ' applyNumberFormat="1"' : ""}${font > 0 ? ' applyFont="1"' : ""}${fill > 0 ? ' applyFill="1"' : ""}`;
    const align = wrap ? ' applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf>' : "/>";
    return `${head}${text ? ' quotePrefix="1"' : ""}${applied}${align}`;
  };
  const byLook: { readonly [L in Look]: string } = {
    text: xf({ text: true }),
    figure: xf({ format: 164 }),
    heading: xf({ font: 1, text: true, wrap: true }),
    title: xf({ font: 2, text: true }),
    total: xf({ format: 164, font: 1 }),
    totalText: xf({ font: 1 }),
    input: xf({ format: 165, fill: 2 }),
  };
  // The first of the formats is everyone's default.
  const formats = LOOKS.map((look) => byLook[look]);
  return [
    `<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="#,##0.00"/>`,
    '<numFmt numFmtId="165" formatCode="#,##0.0"/></numFmts>',
    '<fonts count="3"><font><sz val="11"/></font><font><b/><sz val="11"/></font><font><b/><sz val="14"/></font></fonts>',
    '<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>',
    '<fill><patternFill patternType="solid"><fgColor rgb="FFFFF4D6"/></patternFill></fill></fills>',
    '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>',
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
    `<cellXfs count="${formats.length}">${formats.join("")}</cellXfs>`,
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
  ].join("");
}
