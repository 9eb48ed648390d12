/** Where bundles are run: Node, a bare context, and a page and a module worker in Chromium. */
import { existsSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { text } from "node:stream/consumers";
import { createContext, runInContext } from "node:vm";
import type { Browser } from "playwright-core";
import { launch } from "../browser/chromium.ts";
import { Failed, run } from "./run.ts";

/** What each program answered, by its name. */
export type Answers = { readonly [name: string]: string };

/** Runs scripts in Node, one after the other, as a program of its own. */
export function answersInNode(scripts: readonly string[], folder: string): Answers {
  const load = `${JSON.stringify(scripts)}.forEach((script) => require(script)); console.log(JSON.stringify(answers));`;
  return parsed(run(process.execPath, ["--input-type=commonjs", "--eval", load], folder), "Node");
}

/** Runs a script where there is the language and nothing else, and no text becomes code. */
export function answersWithoutGlobals(script: string): Answers {
  const context = createContext({}, { codeGeneration: { strings: false, wasm: false } });
  try {
    return parsed(
      runInContext(`${readFileSync(script, "utf8")};JSON.stringify(answers)`, context, { filename: script }),
      script,
    );
  } catch (error) {
    throw new Failed(`${script}, without globals: ${error}`);
  }
}

/** Scripts and workers of the site's own, nothing from elsewhere, no text as code; what is stopped is reported. */
const POLICY = "default-src 'none'; script-src 'self'; worker-src 'self'; report-uri /report";
const SLOWEST = 60_000;
const MOMENT = 100;

/** What the page of a site shows, and what its worker. */
export interface Shown {
  readonly page: Answers;
  readonly worker: Answers;
}

/**
 * Opens sites in Chromium, served from localhost under a strict policy. Each tries once in its page
 * and once in its worker to make text into code: the policy has to report these two and no more.
 */
export async function answersInBrowser(folders: readonly string[]): Promise<readonly Shown[]> {
  const browser = await launch();
  try {
    const all: Shown[] = [];
    for (const folder of folders) all.push(await visit(browser, folder));
    return all;
  } finally {
    await browser.close();
  }
}

async function visit(browser: Browser, folder: string): Promise<Shown> {
  const reports: string[] = [];
  const complaints: string[] = [];
  const server = await serve(folder, reports);
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    page.setDefaultTimeout(SLOWEST);
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => complaints.push(message.text()));
    await page.goto(`http://localhost:${(server.address() as AddressInfo).port}/index.html`);
    const shownBy = async (id: string): Promise<Answers> => {
      const text = await page.locator(`#${id}`).textContent();
      return parsed(text ?? "", `${id} of ${folder}`);
    };
    const shown = { page: await shownBy("page"), worker: await shownBy("worker") };
    // A report comes a moment after what it is about.
    for (const start = Date.now(); reports.length < 2 && Date.now() - start < SLOWEST; )
      await page.waitForTimeout(MOMENT);
    if (reports.length !== 2)
      throw new Failed(`${reports.length} reports of the policy, not 2:\n${reports.join("\n")}`);
    if (complaints.length > 0) throw new Failed(`complaints of ${folder}:\n${complaints.join("\n")}`);
    return shown;
  } catch (error) {
    const said = [...complaints, ...reports].join("\n") || "it complained of nothing";
    throw new Failed(`in Chromium: ${(error as Error).message}\n${said}`);
  } finally {
    await context.close();
    server.close();
  }
}

const TYPES: { readonly [extension: string]: string } = { ".html": "text/html", ".js": "text/javascript" };

function serve(folder: string, reports: string[]): Promise<Server> {
  const server = createServer(async (request, response) => {
    const path = (request.url ?? "/").slice(1);
    if (path === "report") {
      reports.push(await text(request));
      response.writeHead(204).end();
      return;
    }
    const type = TYPES[extname(path)];
    const file = join(folder, path);
    if (type === undefined || !existsSync(file)) response.writeHead(404).end();
    else
      response
        .writeHead(200, { "Content-Type": type, "Content-Security-Policy": POLICY })
        .end(readFileSync(file));
  });
  return new Promise((resolve) => server.listen(0, "localhost", () => resolve(server)));
}

function parsed(text: string, where: string): Answers {
  try {
    return JSON.parse(text) as Answers;
  } catch {
    throw new Failed(`${where}: ${text}`);
  }
}
