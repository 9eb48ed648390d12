import { britishEnglish, type Language } from "../document/language.ts";
import { anyText, asWritten } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { language as readerLanguage } from "../document/readLanguage.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { type ComponentId, component } from "../food/components.ts";
import { collect, type Fault, throwIfAny } from "../number/error.ts";
import { attribute } from "./markup.ts";

// Drawings that stand by themselves, in the ink of the text around them: parts are told apart by pattern,
// never by colour, and all that they show is said in words for those who cannot see them.

/** What drawings can be told. */
export interface DrawingOptions {
  /** What to draw, a panel or a curve for each; energy and protein unless told. */
  readonly components?: readonly ComponentId[];
  /** Begins the ids within the drawing, so that several can stand in one document; `drawing` unless told. */
  readonly id?: string;
  /** British English unless told. */
  readonly language?: Language;
}

/** Options as read, with what is usual in place. Throws `card-malformed` and `component-unknown`. */
export function drawingHow(given: unknown): Required<DrawingOptions> {
  const {
    components: ids = ["energy", "protein"],
    id = "drawing",
    language = britishEnglish,
  } = read(drawingSchema(), given, "card-malformed");
  const faults: Fault[] = [];
  ids.forEach((each, i) => {
    collect(faults, ["components", i], () => component(each));
  });
  throwIfAny(faults);
  // What refers to an id within a URL holds no spaces, quotes or brackets.
  return { components: [...new Set(ids)], id: id.replace(/[^\p{L}\p{N}_-]/gu, "-"), language };
}

const drawingSchema: () => Schema<DrawingOptions> = /* @__PURE__ */ once(() =>
  fields<DrawingOptions>({
    components: optional(list(asWritten(), { like: '["energy", "protein"]' })) as Schema<
      readonly ComponentId[] | undefined
    >,
    id: optional(anyText()),
    language: optional(readerLanguage()),
  }),
);

/** A drawing as one SVG element, with its name, what it says in words, and two patterns to fill with. */
export function drawing(
  { id, title, words }: { readonly id: string; readonly title: string; readonly words: string },
  { width, height }: { readonly width: number; readonly height: number },
  body: readonly string[],
): string {
  const own = attribute(id);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" style="max-width:100%;height:auto" role="img" aria-labelledby="${own}-title ${own}-desc" fill="currentColor" stroke="none" font-family="inherit" font-size="14">`,
    `<title id="${own}-title">${attribute(title)}</title><desc id="${own}-desc">${attribute(words)}</desc>`,
    `<defs><pattern id="${own}-lines" width="4" height="4" patternUnits="userSpaceOnUse"><rect width="4" height="2"/></pattern>`,
    `<pattern id="${own}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="1.5" height="6"/></pattern></defs>`,
    ...body,
    "</svg>",
  ].join("");
}

/** Words at a place; `at` says which part of them stands there. */
export function label(text: string, x: number, y: number, at: "start" | "middle" | "end" = "start"): string {
  return `<text x="${place(x)}" y="${place(y)}" text-anchor="${at}">${attribute(text)}</text>`;
}

/** A line between two places. */
export function rule(x1: number, y1: number, x2: number, y2: number, dashed = false): string {
  const dash = dashed ? ' stroke-dasharray="4 3"' : "";
  return `<line x1="${place(x1)}" y1="${place(y1)}" x2="${place(x2)}" y2="${place(y2)}" stroke="currentColor"${dash}/>`;
}

/** A place to the tenth of a unit. */
export function place(x: number): number {
  return Math.round(x * 10) / 10;
}
