import type { EnergyPart } from "../food/energy.ts";
import { type Exact, fraction, times } from "../number/exact.ts";
import { compareRatios, nearest } from "../number/ratio.ts";
import type { EnergyPicture, RowDayShare } from "./card.ts";

/*
 * Pictures as inline SVG. Every part is told from its neighbour by its pattern as well as its colour;
 * what is not known is hatched and has no end. Colours are classes of the page's style.
 */

/** One part of the picture: where it begins, how long it is, and its class. */
interface Bar {
  readonly x: number;
  readonly width: number;
  readonly look: string;
}

const bar = ({ x, width, look }: Bar, height: number): string =>
  width <= 0 ? "" : `<rect class="${look}" x="${x}" y="0" width="${width}" height="${height}"/>`;

/**
 * The patterns that other pictures of the page draw with. A drawing of no size: one that is not
 * displayed would take its patterns with it.
 */
export function patterns(): string {
  return [
    '<svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false"><defs>',
    '<pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="hatch-line" width="2" height="5"/></pattern>',
    '<pattern id="stripes" width="4" height="4" patternUnits="userSpaceOnUse"><rect class="stripe-ground" width="4" height="4"/><rect class="stripe-line" width="4" height="2"/></pattern>',
    '<pattern id="dots" width="5" height="5" patternUnits="userSpaceOnUse"><rect class="dot-ground" width="5" height="5"/><circle class="dot" cx="2.5" cy="2.5" r="1.2"/></pattern>',
    '<pattern id="bars" width="5" height="5" patternUnits="userSpaceOnUse"><rect class="bars-ground" width="5" height="5"/><rect class="bars-line" width="2" height="5"/></pattern>',
    "</defs></svg>",
  ].join("");
}

/** How each constituent looks. */
export const looks: { readonly [P in EnergyPart]: string } = {
  protein: "solid",
  fat: "dots",
  carbohydrate: "stripes",
  fibre: "bars",
  polyols: "plain",
  organicAcids: "plain",
  alcohol: "bars",
};

/** The hatched end of the energy's bar: of so many parts of 300 it can be seen, and of so many it leaves room for what is known. */
const LEAST_END = 3;
const MOST_END = 150;

/**
 * Shares of the energy, end to end; a hatched end where some of it is not known, as long as the share of
 * the mass that does not tell it: a pinch of something keeps no room for what it cannot bring.
 */
export function energySvg(energy: EnergyPicture, id: string): string {
  const untold = round(energy.untold.toNumber() * 300);
  const end = energy.open.length > 0 ? Math.min(MOST_END, Math.max(LEAST_END, untold)) : 0;
  const scale = (300 - end) / 100;
  let x = 0;
  const parts = energy.slices.map(({ part, percent }) => {
    const width = round(percent * scale);
    const drawn = bar({ x: round(x), width, look: looks[part] }, 18);
    x += percent * scale;
    return drawn;
  });
  const rest = energy.open.length > 0 ? bar({ x: round(x), width: round(300 - x), look: "unknown" }, 18) : "";
  return `<svg class="energy" viewBox="0 0 300 18" role="img" aria-labelledby="${id}" preserveAspectRatio="none"><title id="${id}">{title}</title>${parts.join("")}${rest}<rect class="frame" x="0.5" y="0.5" width="299" height="17"/></svg>`;
}

/** The sample of a pattern that stands in a key. */
export function swatch(look: string): string {
  return `<svg class="swatch" viewBox="0 0 14 14" aria-hidden="true" focusable="false"><rect class="${look}" width="14" height="14"/><rect class="frame" x="0.5" y="0.5" width="13" height="13"/></svg>`;
}

/** A whole day is this long; a little more is shown, and what goes beyond ends in an arrow. */
const DAY = 100;
const WHOLE = 120;

/** A nutrient's share of a day: the known part, a hatched one where there may be more, the day's mark. */
export function shareSvg(share: RowDayShare): string {
  const known = Math.min(WHOLE, units(share.known));
  const beyond = compareRatios(share.known, fraction(BigInt(WHOLE), BigInt(DAY))) > 0;
  const upper = share.upper === undefined ? undefined : units(share.upper);
  return [
    `<svg class="share" viewBox="0 0 ${WHOLE} 12" role="img" aria-label="{label}" preserveAspectRatio="none">`,
    bar({ x: 0, width: known, look: share.over ? "over" : "solid" }, 12),
    share.open ? bar({ x: known, width: round(WHOLE - known), look: "unknown" }, 12) : "",
    `<line class="day-mark" x1="${DAY}" y1="0" x2="${DAY}" y2="12"/>`,
    upper !== undefined && upper < WHOLE
      ? `<line class="upper-mark" x1="${upper}" y1="0" x2="${upper}" y2="12"/>`
      : "",
    beyond ? `<path class="beyond" d="M112 2l6 4-6 4z"/>` : "",
    `<rect class="frame" x="0.5" y="0.5" width="${WHOLE - 1}" height="11"/></svg>`,
  ].join("");
}

/** A beam with its weight: at the middle for the recipe as written, an eighth further for each doubling. */
export function beamSvg(factor: Exact): string {
  const weight = beamAt(factor);
  const ticks = Array.from({ length: 17 }, (_, i) => {
    const x = 20 + i * 20;
    return `<line x1="${x}" y1="8" x2="${x}" y2="${i % 4 === 0 ? 15 : 12}"/>`;
  });
  return `<svg class="beam" viewBox="0 0 360 34" aria-hidden="true" focusable="false"><line x1="4" y1="8" x2="356" y2="8"/><circle cx="4" cy="8" r="3"/>${ticks.join("")}<path class="weight" d="M${weight} 8v6m-7 18l3-16h8l3 16z"/></svg>`;
}

/** Doublings and halvings are told in steps of a quarter: a picture, not a figure to be read off. */
function beamAt(factor: Exact): number {
  if (factor.n <= 0n) return 20;
  const fourth = (f: Exact): Exact => times(times(f, f), times(f, f));
  const raised = fourth(factor);
  let quarters = 0;
  let power = fraction(1n);
  const [two, half] = [fraction(2n), fraction(1n, 2n)];
  while (quarters < 8 && compareRatios(times(power, two), raised) <= 0) {
    power = times(power, two);
    quarters += 1;
  }
  while (quarters > -8 && compareRatios(power, raised) > 0) {
    power = times(power, half);
    quarters -= 1;
  }
  return 180 + quarters * 20;
}

function units(share: Exact): number {
  const most = fraction(BigInt(WHOLE * 10));
  const tenths = times(share, fraction(BigInt(DAY * 10)));
  return Number(nearest(compareRatios(tenths, most) > 0 ? most : tenths)) / 10;
}

function round(length: number): number {
  return Math.round(length * 10) / 10;
}
