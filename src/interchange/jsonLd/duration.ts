import { type Exact, exact, times } from "../../number/exact.ts";

const DURATION =
  /^P(?:(\d+(?:[.,]\d+)?)W|(?:(\d+(?:[.,]\d+)?)Y)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)D)?(?:T(?:(\d+(?:[.,]\d+)?)H)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)S)?)?)$/;
/** Minutes in a week, year, month, day, hour, minute and second; years and months have none of their own. */
const MINUTES = ["10080", "", "", "1440", "60", "1", "1/60"] as const;

/**
 * A duration as ISO 8601 writes it (`PT1H30M`), in minutes, exactly; nothing where it is none, or counts
 * years or months, which are of no one length. The grammar is from memory of ISO 8601:2004, 4.4.3.
 */
export function minutesOf(text: string): Exact | undefined {
  const match = DURATION.exec(text.trim());
  if (!match || /[PT]$/.test(match[0])) return undefined;
  let sum = exact(0);
  for (const [i, minutes] of MINUTES.entries()) {
    const part = match[i + 1]?.replace(",", ".");
    if (part === undefined || /^0+(?:\.0+)?$/.test(part)) continue;
    if (minutes === "") return undefined;
    sum = sum.plus(times(exact(part), exact(minutes)));
  }
  return sum;
}
