import { existsSync } from "node:fs";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";

/** Where Debian's package puts it. Tests install nothing. */
export const chromiumPath = "/usr/bin/chromium";

/** Why the browser tests do not run here; undefined where they do. */
export const missing: string | undefined = existsSync(chromiumPath)
  ? undefined
  : `there is no ${chromiumPath} here; apt-get install chromium`;

/** Skipping is for a desk of one's own: where CI lacks a browser, the tests run and fail. */
export const skips: boolean = missing !== undefined && !process.env.CI;

/** A browser of its own, with a new and empty profile, that speaks to nobody by itself. */
export async function launch(): Promise<Browser> {
  if (missing) throw new Error(missing);
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}

/** What a page did beyond showing itself. */
export interface Deeds {
  /** Everything that it asked for, itself left out. */
  readonly requests: string[];
  readonly dialogs: string[];
  /** What the console says: errors of script, and what the page's own policy had to stop. */
  readonly complaints: string[];
}

const ADDRESS = "http://card.test/";

/** Opens a page from text, as a site that answers nothing else, and notes all that it tries. */
export async function open(
  browser: Browser,
  html: string,
  how: Parameters<Browser["newContext"]>[0] = {},
): Promise<{ readonly page: Page; readonly context: BrowserContext; readonly deeds: Deeds }> {
  const context = await browser.newContext(how);
  const deeds: Deeds = { requests: [], dialogs: [], complaints: [] };
  await context.route("**", (route) => {
    const url = route.request().url();
    if (url === ADDRESS) return route.fulfill({ contentType: "text/html; charset=utf-8", body: html });
    deeds.requests.push(url);
    return route.abort();
  });
  const page = await context.newPage();
  page.on("dialog", (dialog) => {
    deeds.dialogs.push(dialog.message());
    return dialog.dismiss();
  });
  page.on("pageerror", (error) => deeds.complaints.push(String(error)));
  page.on("console", (message) => deeds.complaints.push(message.text()));
  await page.goto(ADDRESS);
  return { page, context, deeds };
}

/** How many pages a printed document has, by its page objects, which Chromium leaves uncompressed. */
export function pagesOf(pdf: Buffer): number {
  return (pdf.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? []).length;
}
