import type { Person } from "steelyard/person";

/** The camp's crew, all of them invented. */
export const crew = {
  Cox: {
    sex: "female",
    age: 17,
    mass: "7 st 8 lb",
    height: "5 ft 2 in",
    activity: "active",
    allergens: ["fish"],
  },
  Lightweight: { sex: "female", age: 24, mass: "58.5 kg", height: "1.72 m", activity: "vigorous" },
  Heavyweight: { sex: "male", age: 27, mass: "94 kg", height: "1.96 m", activity: "2.3" },
  Coach: {
    sex: "male",
    age: 67,
    mass: "81 kg",
    height: "1.78 m",
    activity: "sedentary",
    conditions: ["warfarin"],
  },
} as const satisfies Readonly<Record<string, Person>>;
