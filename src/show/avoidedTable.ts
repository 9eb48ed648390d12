import { type Language, say } from "../document/language.ts";
import { allergens } from "../food/allergens.ts";
import type { PlanAvoided } from "../plan/people/avoided.ts";
import { pathWords } from "../sheet/names.ts";
import { type Row, type Table, table } from "./table.ts";

/** What to ask and to know before serving, person by person; none where nobody avoids anything. */
export function avoidedTables(avoided: PlanAvoided, language: Language): readonly Table[] {
  return avoided.people.length === 0 ? [] : [avoidedTable(avoided, language)];
}

function avoidedTable(avoided: PlanAvoided, language: Language): Table {
  const [names, byOrigin] = [avoided.names(), avoided.byOrigin()];
  const words = (text: string, gaps?: { readonly [gap: string]: string }): string =>
    say(language, text, gaps);
  const rows = avoided.people.flatMap(({ person, avoids }): Row[] => {
    const list = avoids.map((name) => words(name)).join(", ");
    const unknown = avoided.unknown.filter((each) => each.person === person);
    const served = avoided.overridden.filter((each) => each.person === person);
    const body = [
      ...served.map(({ meal, dish, lines, avoided: what, name, because }) => [
        names.meal(meal),
        lines.map((key) => pathWords(names.line(meal, dish, key))).join(", "),
        "origin" in what
          ? words("of animal or mixed origin: served all the same. {because}", { because })
          : words("holds {name}: served all the same. {because}", { name: words(name), because }),
      ]),
      ...unknown.map(({ meal, dish, line, food, of, origin, why }) => [
        names.meal(meal),
        pathWords(names.line(meal, dish, line)),
        origin === undefined
          ? words("{food} {why}: ask about {list}", {
              food: words(food),
              why: words(why),
              list: of.map((id) => words(allergens[id].name)).join(", "),
            })
          : words("{food} {why}: ask whether any is of animal origin", {
              food: words(food),
              why: words(why),
            }),
      ]),
    ];
    const nothing = ["", "", words("nothing served is said to hold it, and no food is silent")];
    return [
      { kind: "group", heading: words("{person}: no {list}", { person: names.person(person), list }) },
      ...(body.length > 0 ? body : [nothing]).map((cells): Row => ({ kind: "body", cells })),
    ];
  });
  return table({
    title: words("What people avoid"),
    columns: [
      { key: "meal", heading: words("Meal") },
      { key: "line", heading: words("Line") },
      { key: "known", heading: words("Before serving") },
    ],
    rows,
    notes: [
      words("Foods are taken at what their data say, and a kitchen can carry traces over. Read the labels."),
      ...(byOrigin
        ? [
            words(
              "Milk, eggs and honey are of animal origin. Fining agents and carriers of added vitamins are told by no table: the label or the maker has the last word.",
            ),
          ]
        : []),
    ],
  });
}
