/**
 * Whatever is handed to a public function or to a method of what it gives back, it answers or throws
 * the one error with a way out. Walks over what `steelyard` exports, so a new export is in it at once.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { SteelyardError } from "steelyard";
import { describe, expect, it } from "vitest";
import * as steelyard from "./everything.ts";
import { calls, good, lists, made, names } from "./hostileCalls.ts";
import { isLong } from "./runs.ts";
import { root } from "./sources.ts";

type Callable = (...given: unknown[]) => unknown;

const hostile: readonly unknown[] = [
  ...[undefined, null, Number.NaN, "", "x", [], {}, [null]],
  ...[() => 1, Symbol("s"), 1n, Object.create(null), new Date(0), good.bowl],
  ...[class A {}, new (class B {})(), new Map()],
];

const isCallable = (value: unknown): value is Callable =>
  typeof value === "function" && !/^class\b/.test(Function.prototype.toString.call(value));
const functions = Object.entries<unknown>(steelyard).flatMap(([name, f]) =>
  isCallable(f) ? [[name, f] as const] : [],
);

/** What of a call is not as it should be; nothing where it answers, or refuses with a way out. */
function wrong(call: () => unknown): string | undefined {
  try {
    drain(call());
  } catch (error) {
    if (!(error instanceof SteelyardError)) return `a raw ${String(error)}`;
    const poor = error.faults.find(({ code, hint, path }) => !code || !hint.trim() || !Array.isArray(path));
    return poor && `a fault without a way out: ${JSON.stringify(poor)}`;
  }
  return undefined;
}

/** What is made step by step does nothing until it is asked. */
function drain(made: unknown): void {
  if (typeof made === "object" && made !== null && "next" in made) for (const _ of made as Generator);
}

function show(value: unknown): string {
  if (typeof value === "object" && value !== null)
    return Object.prototype.toString.call(value) + Object.keys(value);
  return typeof value === "string" ? JSON.stringify(value) : String(value);
}

/** The calls that go wrong, each said once by what went wrong. */
class Failures {
  readonly #found = new Map<string, string>();

  try(name: string, call: Callable, given: readonly unknown[]): void {
    const what = wrong(() => call(...given));
    if (what) this.note(name, what, given);
  }

  note(name: string, what: string, given: readonly unknown[]): void {
    const key = `${name}: ${what}`;
    if (!this.#found.has(key)) this.#found.set(key, `${key}, for (${given.map(show).join(", ")})`);
  }

  get all(): string[] {
    return [...this.#found.values()];
  }
}

/** An object of plain fields, whose fields can be spoilt one by one; not what the library made. */
function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return (
    !made.has(value) &&
    typeof value === "object" &&
    value !== null &&
    Object.getPrototypeOf(value) === Object.prototype
  );
}

function replaced(list: readonly unknown[], at: number, by: unknown): readonly unknown[] {
  return list.map((each, i) => (i === at ? by : each));
}

let turn = 0;

/** All values in the long run; otherwise each fourth, another one first each time, so that all come up. */
function inTurn<T>(values: readonly T[]): readonly T[] {
  turn += 1;
  return isLong ? values : values.filter((_, i) => (i + turn) % 4 === 0);
}

/** A value with each part of it replaced in turn by hostile ones, to some depth. */
function* spoilt(value: unknown, depth: number): Generator<unknown> {
  if (depth === 0) return;
  if (Array.isArray(value)) {
    for (const [i, each] of value.entries())
      for (const bad of [...inTurn(hostile), ...spoilt(each, depth - 1)]) yield replaced(value, i, bad);
  } else if (isPlain(value)) {
    for (const [field, each] of Object.entries(value))
      for (const bad of [...inTurn(hostile), ...spoilt(each, depth - 1)]) yield { ...value, [field]: bad };
  }
}

type Place = readonly (string | number)[];

/** Longer than any list, and of no size while its items are holes. */
const ENDLESS = 400_000_000;

/** A value with each of its lists in turn short of an item, or of nearly all of a great many, and where that is. */
function* holed(value: unknown, place: Place = []): Generator<readonly [unknown, Place]> {
  if (Array.isArray(value)) {
    for (const i of [...value.keys(), value.length]) {
      const list: unknown[] = [...value];
      list.length = i < value.length ? value.length : ENDLESS;
      delete list[i];
      yield [list, [...place, i]];
    }
    for (const [i, each] of value.entries())
      for (const [bad, at] of holed(each, [...place, i])) yield [replaced(value, i, bad), at];
  } else if (isPlain(value)) {
    for (const [field, each] of Object.entries(value))
      for (const [bad, at] of holed(each, [...place, field])) yield [{ ...value, [field]: bad }, at];
  }
}

/** Whether a path leads through all the steps of another, in their order, and ends where it does. */
function leadsTo(path: Place, place: Place): boolean {
  const [step, ...rest] = place;
  if (step === undefined) return path.length === 0;
  const at = path.indexOf(step);
  return at >= 0 && leadsTo(path.slice(at + 1), rest);
}

/** Names of the methods and of the fields that the public face has, whoever has them. */
const face = readFileSync(join(root, "test/package/face/index.d.txt"), "utf8");
const methods = new Set([...face.matchAll(/^ {4}(\w+)\??\(/gm)].map(([, name]) => name ?? ""));
methods.delete("constructor");
const fields = new Set(
  [...face.matchAll(/^ {4}(?:readonly |get )(\w+)\??[:(]/gm)].map(([, name]) => name ?? ""),
);

interface Holder {
  readonly name: string;
  readonly holder: Readonly<Record<string, unknown>>;
}

/** Every kind of object that has public methods and can be reached from what good calls give. */
function holders(): Holder[] {
  const kinds = new Map<string, Holder>();
  const seen = new Set<unknown>();
  const visit = (value: unknown, depth: number): void => {
    if (typeof value !== "object" || value === null || depth === 0 || seen.has(value)) return;
    if (ArrayBuffer.isView(value)) return;
    seen.add(value);
    if (Array.isArray(value) || value instanceof Map) {
      for (const each of [...value.values()].slice(0, 3)) visit(each, depth - 1);
      return;
    }
    const holder = value as Holder["holder"];
    const own = [...methods].filter((name) => typeof holder[name] === "function").sort();
    const type = (value as object).constructor?.name ?? "Object";
    const name = type === "Object" ? `{ ${own.join(", ")} }` : type;
    if (own.length > 0 && type !== "Decimal" && !kinds.has(name)) kinds.set(name, { name, holder });
    for (const field of fields) if (field in holder) visit(holder[field], depth - 1);
  };
  for (const [name, f] of functions) for (const given of calls[name] ?? []) visit(f(...given), 5);
  for (const { holder } of [...kinds.values()]) {
    for (const method of methods) {
      const call = holder[method];
      if (!isCallable(call)) continue;
      for (const name of names) {
        try {
          visit(call.call(holder, name, name), 2);
        } catch (error) {
          if (!(error instanceof SteelyardError)) break;
        }
      }
    }
  }
  return [...kinds.values()];
}

describe("a method of what a public function gives", () => {
  it("answers or refuses with a way out, whatever it is given", () => {
    const failures = new Failures();
    const found = holders();
    const values = [...hostile, ...names];
    for (const { name, holder } of found) {
      for (const method of methods) {
        const call = holder[method];
        if (!isCallable(call)) continue;
        const bound = call.bind(holder);
        const label = `${name}.${method}`;
        failures.try(label, bound, []);
        for (const first of values) {
          failures.try(label, bound, [first]);
          failures.try(label, bound, ["cox", "breakfast", first]);
          // After a first argument that is refused the second is seldom looked at.
          const seconds = call.length === 0 ? [] : names.includes(first) ? inTurn(values) : names.slice(0, 1);
          for (const second of seconds) failures.try(label, bound, [first, second]);
        }
      }
    }
    expect(found.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        "Sheet",
        "Tally",
        "FoodTable",
        "Plan",
        "ServedPortion",
        "Comparison",
        "ShoppingList",
      ]),
    );
    expect(failures.all).toEqual([]);
  });
});

describe("international units", () => {
  it.each([
    () => steelyard.scale(good.bowl, { vitaminD: "10 IU" }),
    () => steelyard.fit(good.bowl, [{ of: "vitaminD", least: "10 i.u." }]),
    () => steelyard.amount("400 IU"),
  ])("are pointed to micrograms: %s", (call) => {
    expect(call).toThrow(expect.objectContaining({ hint: expect.stringContaining("µg") }));
  });
});

describe("a public function", () => {
  it("has a good call in hostileCalls.ts, to be spoilt", () => {
    expect(functions.map(([name]) => name).filter((name) => !calls[name])).toEqual([]);
    const refused = functions.flatMap(([name, f]) =>
      (calls[name] ?? []).flatMap((given) => {
        try {
          drain(f(...given));
          return [];
        } catch (error) {
          return [`${name}: ${String(error)}`];
        }
      }),
    );
    expect(refused).toEqual([]);
  });

  it("answers or refuses with a way out, whatever it is given", () => {
    const failures = new Failures();
    const values = [...hostile, ...Object.values(good)];
    for (const [name, f] of functions) {
      failures.try(name, f, []);
      for (const first of values) {
        for (const second of inTurn(values)) {
          failures.try(name, f, [first, second]);
        }
      }
    }
    expect(failures.all).toEqual([]);
  });

  it("answers or refuses with a way out where one part of a good call is spoilt", () => {
    const failures = new Failures();
    for (const [name, f] of functions) {
      for (const given of calls[name] ?? []) {
        for (const [i, each] of given.entries()) {
          for (const bad of [...hostile, ...spoilt(each, 3)]) failures.try(name, f, replaced(given, i, bad));
        }
        for (const bad of hostile) failures.try(name, f, [...given, bad]);
      }
    }
    expect(failures.all).toEqual([]);
  }, 180_000);

  it("refuses a list that is short of an item, and says where", () => {
    const wrongly = functions.flatMap(([name, f]) =>
      [...(calls[name] ?? []), ...(lists[name] ?? [])].flatMap((given) =>
        given.flatMap((each, i) =>
          [...holed(each)].flatMap(([bad, place]): string[] => {
            try {
              drain(f(...replaced(given, i, bad)));
            } catch (error) {
              const told = error instanceof SteelyardError ? error.faults : [];
              // Of a list that is too long it is the list that is at fault.
              const isTold = told.some(
                ({ path, message }) =>
                  leadsTo(path, place) ||
                  (message.includes(`${ENDLESS}`) && leadsTo(path, place.slice(0, -1))),
              );
              return isTold ? [] : [`${name} ${place}: ${String(error)}`];
            }
            return [`${name} ${place}: accepted`];
          }),
        ),
      ),
    );
    expect(wrongly).toEqual([]);
  });

  it("takes each list that is held against holes while it is whole", () => {
    for (const [name, f] of functions) for (const given of lists[name] ?? []) drain(f(...given));
  });

  it("refuses an option that there is not, and names it", () => {
    const accepted = functions.flatMap(([name, f]) =>
      (calls[name] ?? []).flatMap((given) =>
        given.flatMap((each, i) => {
          if (!isPlain(each) || notOptions.has(name)) return [];
          try {
            drain(f(...replaced(given, i, { ...each, componnents: 1 })));
          } catch (error) {
            if (error instanceof SteelyardError && error.message.includes("componnents")) return [];
            return [`${name}: ${String(error)}`];
          }
          return [`${name}, argument ${i + 1}`];
        }),
      ),
    );
    expect(accepted).toEqual([]);
  });
});

/** Functions that take what was made elsewhere and may say more, or objects by a name of the caller's own. */
const notOptions: ReadonlySet<string> = new Set([
  "countsFood",
  "recipeFromJsonLd",
  "retentionCodes",
  "shareDay",
  "swapFor",
  "table",
  "yieldCodes",
]);
