/** The page: hands the worker what was asked, newest first, and shows what comes back. */
import type { Asked, Portion, Told } from "./portion.ts";

const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });

function at<E extends HTMLElement>(id: string, kind: new () => E): E {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`the page lacks ${id}`);
  return found;
}

const text = at("text", HTMLTextAreaElement);
const spoons = at("spoons", HTMLSelectElement);
const energy = at("energy", HTMLInputElement);
const protein = at("protein", HTMLInputElement);
const moves = at("moves", HTMLSelectElement);
const frame = at("card", HTMLIFrameElement);

/** Which recipe the sliders stand for; another starts them anew. */
let recipe = "";
let printing = false;
let busy = false;
let waiting = false;

/** Asks for what the page stands at now. While the worker is busy only the newest wish waits. */
function ask(): void {
  tellAsked();
  waiting = busy;
  if (busy) return;
  setBusy(true);
  const kitchen = document.querySelector<HTMLInputElement>("input[name=kitchen]:checked")?.value;
  const asked: Asked = {
    text: text.value,
    spoons: spoons.value as Asked["spoons"],
    kitchen: kitchen as Asked["kitchen"],
    ...(recipe === named() && { energy: energy.valueAsNumber }),
    ...(recipe === named() && moves.value && { moves: moves.value, protein: protein.valueAsNumber }),
    ...(printing && { who: at("who", HTMLInputElement).value }),
  };
  printing = false;
  worker.postMessage(asked);
}

function setBusy(now: boolean): void {
  busy = now;
  at("portion", HTMLElement).ariaBusy = String(now);
}

const named = (): string => `${spoons.value} ${text.value}`;

worker.addEventListener("message", ({ data }: MessageEvent<Told>) => {
  setBusy(false);
  list("unclear", data.unclear);
  at("portion", HTMLElement).hidden = !data.portion;
  at("print", HTMLButtonElement).disabled = !data.portion;
  if (data.portion) show(data.portion);
  if (waiting) ask();
  if (data.page !== undefined) printed(data.page);
});

function show({ name, written, protein: grams, misses, lines, nutrients, cautions }: Portion): void {
  at("portion-heading", HTMLElement).textContent = `One portion of ${name}`;
  // What came of an earlier text says nothing of this one.
  if (recipe !== named() && !waiting) start(written, lines);
  if (!moves.value) protein.valueAsNumber = grams;
  protein.disabled = !moves.value;
  tellAsked();
  at("told", HTMLElement).textContent = misses.join(". ");
  rows(
    "lines",
    lines.map((line) => [line.name, line.amount]),
  );
  rows(
    "nutrients",
    nutrients.map((row) => [row.name, row.amount, row.noData]),
  );
  list("cautions", cautions);
}

/** Sliders from half a portion to two, standing at the portion as written. */
function start(written: Portion["written"], lines: Portion["lines"]): void {
  recipe = named();
  for (const [slider, figure, step] of [
    [energy, written.energy, 10],
    [protein, written.protein, 1],
  ] as const) {
    slider.min = String(Math.ceil(figure / 2 / step) * step);
    slider.max = String(Math.ceil((figure * 2) / step) * step);
    slider.valueAsNumber = figure;
  }
  const options = lines.map(({ key, name }) => new Option(name, key));
  moves.replaceChildren(new Option("nothing: protein follows the recipe", ""), ...options);
}

/** Where the sliders stand; the tables tell what the measured amounts bring. */
function tellAsked(): void {
  at("energy-told", HTMLOutputElement).value = `${energy.value} kcal`;
  at("protein-told", HTMLOutputElement).value = `${protein.value} g`;
}

function list(id: string, texts: readonly string[]): void {
  at(id, HTMLElement).replaceChildren(...texts.map((told) => element("li", told)));
}

/** Rows of a table, each headed by its first cell. */
function rows(id: string, all: readonly (readonly string[])[]): void {
  const made = all.map(([head = "", ...cells]) => {
    const row = document.createElement("tr");
    const heading = element("th", head);
    heading.setAttribute("scope", "row");
    row.append(heading, ...cells.map((cell) => element("td", cell)));
    return row;
  });
  at(id, HTMLElement).replaceChildren(...made);
}

function element(tag: string, told: string): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = told;
  return made;
}

function printed(page: string): void {
  frame.hidden = false;
  frame.onload = () => frame.contentWindow?.postMessage(page, location.origin);
  frame.src = "./card.html";
}

text.addEventListener("input", ask);
document.addEventListener("change", ask);
for (const slider of [energy, protein]) slider.addEventListener("input", ask);
at("print", HTMLButtonElement).addEventListener("click", () => {
  printing = true;
  ask();
});
ask();
