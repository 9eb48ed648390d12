/** The card in a real browser: what it looks like, who can read it, how it prints, what it never does. */

import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardPages, personCard } from "../../src/card/personCard.ts";
import { shoppingCard } from "../../src/card/shoppingCard.ts";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { hostileCard, sentinel } from "../card/hostileCard.ts";
import { campDay, campPlan } from "../plan/camp.ts";
import { isLong } from "../runs.ts";
import { launch, missing, open, pagesOf, skips } from "./chromium.ts";

const plan = campPlan();
const card = (person: string): string =>
  personCard(plan, person, { date: "2026-01-12", version: "second edition", day: campDay });

describe.skipIf(skips)(missing ? `a card in Chromium (${missing})` : "a card in Chromium", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  it("asks for nothing, runs nothing and complains of nothing", async () => {
    for (const { id } of plan.people) {
      const { deeds, context, page } = await open(browser, card(id));
      expect(await page.locator("script").count()).toBe(0);
      await context.close();
      expect(deeds).toEqual({ requests: [], dialogs: [], complaints: [] });
    }
  });

  it("leaves hostile names inert", async () => {
    const { page, context, deeds } = await open(browser, hostileCard());
    await page.mouse.move(300, 200);
    await page.waitForTimeout(200);
    expect(await page.evaluate(`typeof ${sentinel}`)).toBe("undefined");
    await context.close();
    expect(deeds).toEqual({ requests: [], dialogs: [], complaints: [] });
  });

  it("would notice: the same names unescaped, without the page's policy, do ask and run", async () => {
    const raw = hostileCard()
      .replace(/<meta http-equiv[^>]*>/, "")
      .replaceAll("&lt;", "<")
      .replaceAll("&gt;", ">")
      .replaceAll("&quot;", '"')
      .replaceAll("&#39;", "'");
    const { page, context, deeds } = await open(browser, raw);
    await page.waitForTimeout(200);
    expect(await page.evaluate(`typeof ${sentinel}`)).toBe("number");
    await context.close();
    expect(deeds.requests.length).toBeGreaterThan(0);
  });

  it("would be stopped by its own policy, were something to slip through", async () => {
    const slipped = card("cox").replace(
      '<main class="sides">',
      `<main class="sides"><img src="http://card.test/x.png"><script>${sentinel}=1</script>`,
    );
    const { page, context, deeds } = await open(browser, slipped);
    expect(await page.evaluate(`typeof ${sentinel}`)).toBe("undefined");
    await context.close();
    expect(deeds.requests).toEqual([]);
    expect(deeds.complaints.length).toBeGreaterThan(0);
  });

  const views = [
    ["light", { colorScheme: "light", viewport: { width: 1280, height: 900 } }],
    ["dark", { colorScheme: "dark", viewport: { width: 1280, height: 900 } }],
    ["light, on a phone", { colorScheme: "light", viewport: { width: 360, height: 700 } }],
    ["dark, on a phone", { colorScheme: "dark", viewport: { width: 360, height: 700 } }],
  ] as const;
  // The long run looks at all four.
  it.each(isLong ? views : [views[0], views[3]])("gives axe nothing to find: %s", async (_, how) => {
    for (const html of [card("cox"), hostileCard()]) {
      const { page, context } = await open(browser, html, how);
      const { violations, passes } = await audit(page);
      await context.close();
      expect(violations).toEqual([]);
      // The rules that matter most here did run.
      expect(passes).toEqual(
        expect.arrayContaining([
          "color-contrast",
          "html-has-lang",
          "landmark-one-main",
          "region",
          "svg-img-alt",
          "heading-order",
          "td-headers-attr",
          "scope-attr-valid",
        ]),
      );
    }
  });

  it("is laid out for those who listen: landmarks, headings, headed tables, named pictures", async () => {
    const { page, context } = await open(browser, card("cox"));
    const spoken = await page.locator("body").ariaSnapshot();
    await context.close();
    for (const part of [
      "- banner:",
      "- main:",
      "- contentinfo:",
      '- heading "Cox" [level=1]',
      '- region "Breakfast":',
      '- heading "Oat pot" [level=3]',
      '- table "Oat pot":',
      '- rowheader "From the pot"',
      '- region "Nutrients of this portion":',
      'img "Energy: protein 15%, fat 29%, carbohydrate 56%"',
      'img "at least 55% of a day, the rest is not known"',
      '- region "Take care":',
    ]) {
      expect(spoken).toContain(part);
    }
  });

  it("is a shopping list of two lines an item on a phone, with nothing for axe to find, on one sheet of A4", async () => {
    const list = shoppingCard(shoppingList(plan, { cupboard: { "oats-rolled-dry": "50 g" } }));
    const { page, context, deeds } = await open(browser, list, { viewport: { width: 375, height: 700 } });
    expect((await audit(page)).violations).toEqual([]);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(375);
    await context.close();
    expect(deeds).toEqual({ requests: [], dialogs: [], complaints: [] });
    expect((await printed(list)).A4).toBe(1);
  });

  it("follows the reader's choice of light and dark, and is printed as ink on paper either way", async () => {
    const shade = async (page: Page): Promise<number> => {
      const colour = await page.evaluate("getComputedStyle(document.documentElement).backgroundColor");
      return Math.max(...(String(colour).match(/\d+/g) ?? []).map(Number));
    };
    const light = await open(browser, card("cox"), { colorScheme: "light" });
    expect(await shade(light.page)).toBeGreaterThan(230);
    await light.context.close();
    const dark = await open(browser, card("cox"), { colorScheme: "dark" });
    expect(await shade(dark.page)).toBeLessThan(40);
    await dark.page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await shade(dark.page)).toBe(255);
    await dark.context.close();
  });

  // WCAG 2.2, success criterion 1.4.10 Reflow: 320 CSS pixels without scrolling sideways.
  it("reflows to 320 pixels", async () => {
    for (const html of [card("heavyweight"), hostileCard()]) {
      const { page, context } = await open(browser, html, { viewport: { width: 320, height: 640 } });
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(320);
      await context.close();
    }
  });

  it("prints on one side of A4 or A5, and its sources on a second", async () => {
    for (const { id } of plan.people) {
      expect(await printed(card(id)), id).toEqual({ A4: 2, A5: 2 });
    }
  });

  it("prints ten people in one document, two sides each, with nothing for axe to find", async () => {
    const [batch] = [...(plan.meals[0]?.batch.values() ?? [])];
    const people = Array.from({ length: 10 }, (_, i) => ({
      id: `seat${i + 1}`,
      name: `Seat ${i + 1}`,
      demands: { factor: 1 + i / 10 },
    }));
    const ten = portionPlan({
      meals: [{ id: "breakfast", dishes: batch as Sheet }],
      people,
      kitchen: "metric",
    });
    const pages = cardPages(ten, { date: "2026-01-12" });
    const { page, context } = await open(browser, pages);
    expect((await audit(page)).violations).toEqual([]);
    expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(20);
    // In print nothing is folded away, and no type is smaller than can be read.
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("details li").first().isVisible()).toBe(true);
    const sizes = await page.evaluate(
      "[...document.querySelectorAll('main *')].filter((e) => !e.closest('svg') && e.innerText).map((e) => parseFloat(getComputedStyle(e).fontSize) * 0.75)",
    );
    expect(Math.min(...(sizes as number[]))).toBeGreaterThanOrEqual(7.3);
    await context.close();
  });

  it.each([
    [1, 1],
    [4, 1],
    [9, 1],
    [5, 2],
  ])("prints on one side, with %i lines in each of %i dishes", async (lines, dishes) => {
    expect(await printed(largerCard(lines, dishes))).toEqual({ A4: 2, A5: 2 });
  });

  it("would notice another side: what no type can fit goes on to one", async () => {
    expect((await printed(largerCard(40, 4))).A4).toBeGreaterThan(2);
  });

  async function printed(html: string): Promise<{ A4: number; A5: number }> {
    const { page, context } = await open(browser, html);
    const count = async (format: "A4" | "A5"): Promise<number> => pagesOf(await page.pdf({ format }));
    const pages = { A4: await count("A4"), A5: await count("A5") };
    await context.close();
    return pages;
  }
});

/** Every rule that axe has, best practice included. */
async function audit(page: Page): Promise<{ violations: string[]; passes: string[] }> {
  await page.evaluate(axe.source);
  const found = (await page.evaluate("axe.run(document)")) as axe.AxeResults;
  return {
    violations: found.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`)),
    passes: found.passes.map(({ id }) => id),
  };
}

/** A card of any size, from foods with names as long as they come. */
function largerCard(lines: number, dishes: number): string {
  const ids = starterFoods.ids;
  const made = Array.from({ length: dishes }, (_, d) => {
    const all = Array.from({ length: lines }, (_, i) => ({
      key: `line${i}`,
      food: ids[(d * lines + i) * 3] ?? "oats-rolled-dry",
      amount: `${15 + 7 * i} g`,
      ...(i % 3 === 0 && { prep: "finely chopped and drained" }),
    }));
    const method = all.map(({ key }) => `Stir in {${key}} and wait until all of it is warm again.`);
    return [
      `dish${d}`,
      sheet({ name: `Dish ${d + 1}`, portions: 2, lines: all, method }, starterFoods),
    ] as const;
  });
  const larger = portionPlan({
    meals: [{ id: "dinner", name: "Dinner", dishes: Object.fromEntries(made) }],
    people: [{ id: "coach", name: "Coach", demands: { energy: 800 } }],
    silent: "accept",
  });
  return personCard(larger, "coach", { date: "2026-01-12", version: "1", day: campDay });
}
