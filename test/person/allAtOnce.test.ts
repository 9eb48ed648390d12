/** Whatever is wrong in any of the arguments is told in one error, each fault where it stands. */

import { starterFoods } from "steelyard/foods";
import { expect, it } from "vitest";
import {
  type Aim,
  type Authority,
  allergenCheck,
  cautionsFor,
  compare,
  dayTarget,
  demandsFor,
  energyNeed,
  energyRangesFor,
  type Person,
  type PlanInput,
  portionPlan,
  proteinQuality,
  referenceIntakes,
  sheet,
} from "../everything.ts";
import { errorOf } from "../number/errorOf.ts";

const oats = { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "60 g" }] };
const bowl = sheet(oats, starterFoods);
const nobody = { sex: "man", age: 200, mass: "52 kg", height: "tall" } as unknown as Person;
const aim = { weight: "lose", protein: { perKg: "much" } } as unknown as Aim;
const nowhere = "fr" as unknown as Authority;
const none = 1 as never;
const ofPerson = ["sex", "age", "height"];

it.each<readonly [string, () => unknown, readonly string[]]>([
  ["energyNeed", () => energyNeed(nobody, { equation: "x" } as never), ["equation", ...ofPerson]],
  [
    "dayTarget",
    () => dayTarget(nobody, aim, { authority: nowhere }),
    ["authority", ...ofPerson, "weight", "protein.perKg"],
  ],
  [
    "demandsFor",
    () => demandsFor(nobody, nowhere, { aim, share: "much", limits: "2", guidance: none }),
    ["share", "limits", "guidance", "authority", ...ofPerson, "weight", "protein.perKg"],
  ],
  [
    "referenceIntakes",
    () => referenceIntakes(nowhere, nobody, { energy: "much", equation: "x", phytate: 1 } as never),
    ["authority", "phytate", "equation", "energy", ...ofPerson],
  ],
  ["energyRangesFor", () => energyRangesFor(nowhere, nobody), ["authority", ...ofPerson]],
  [
    "compare",
    () => compare(none, none, { person: nobody, components: ["x"], system: "y" } as never),
    ["", "", "components.0", ...ofPerson.map((field) => `person.${field}`), "system"],
  ],
  [
    "proteinQuality",
    () => proteinQuality(none, { person: nobody, patterns: ["x"] } as never),
    ["", "patterns.0", ...ofPerson.map((field) => `person.${field}`)],
  ],
  ["allergenCheck", () => allergenCheck(none, nobody, { over: 1 } as never), ["over", "", ...ofPerson]],
  ["cautionsFor", () => cautionsFor(none, nobody), ["", ...ofPerson]],
  [
    "portionPlan",
    () =>
      portionPlan({
        meals: [{ id: "m", dishes: bowl }],
        people: [
          { id: "cox", person: nobody, aim },
          { id: "bow", demands: { energy: "much" } },
        ],
        authority: nowhere,
      } as PlanInput),
    [
      "people.1.demands.energy",
      "authority",
      ...[...ofPerson.map((field) => `person.${field}`), "aim.weight", "aim.protein.perKg"].map(
        (field) => `people.0.${field}`,
      ),
    ],
  ],
])("%s tells all of its arguments' faults at once", (_, call, places) => {
  expect(errorOf(call).faults.map(({ path }) => path.join("."))).toEqual(places);
});

it("tells what is to be written for the very thing that is wanted", () => {
  const hints = errorOf(() => dayTarget(nobody, aim)).faults.map(({ path, hint }) => [path.at(-1), hint]);
  expect(Object.fromEntries(hints)).toMatchObject({
    height: 'write "1.70 m", "170 cm" or "5 ft 7 in"',
    weight: 'give "hold", { lose } or { gain }, as in { lose: { percent: 15 } }',
    perKg: 'write a figure in g: "100 g"',
  });
});
