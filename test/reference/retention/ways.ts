/** What is cooked and how: kinds of food that lean on each other where few of one were analysed. */
export interface Way {
  readonly code: string;
  readonly name: string;
  /** USDA's code (Release 6) of the same. */
  readonly usda: string;
  readonly kingdom: "animal" | "plant";
  readonly kind: "meat" | "poultry" | "fish" | "legumes" | "grain" | "vegetables";
  readonly heat: "moist" | "dry" | "steam";
}

type Row = readonly [code: string, name: string, usda: string, heat?: Way["heat"]];

function of(kingdom: Way["kingdom"], kind: Way["kind"], rows: readonly Row[]): readonly Way[] {
  return rows.map(([code, name, usda, heat = "moist"]) => ({ code, name, usda, kingdom, kind, heat }));
}

export const ways: readonly Way[] = [
  ...of("plant", "grain", [
    ["oatmeal-boiled", "oatmeal, boiled", "352"],
    ["grains-boiled", "grains and breakfast cereals, boiled, the water taken up", "358"],
    ["pasta-boiled", "pasta and noodles, boiled, drained", "381"],
    ["rice-boiled", "rice, boiled, the water taken up", "432"],
  ]),
  ...of("plant", "legumes", [
    ["lentils-boiled", "lentils and other quick legumes, boiled", "501"],
    ["legumes-boiled", "beans, chickpeas and other slow legumes, boiled", "521"],
  ]),
  ...of("animal", "meat", [
    ["beef-roasted", "beef, roasted", "601", "dry"],
    ["beef-grilled", "beef, grilled", "602", "dry"],
    ["beef-fried", "beef, fried without a coating", "604", "dry"],
    ["beef-braised", "beef, braised, without the liquid", "651"],
    ["beef-simmered", "beef, simmered, without the liquid", "653"],
  ]),
  ...of("animal", "poultry", [
    ["chicken-grilled", "chicken, grilled", "801", "dry"],
    ["chicken-fried", "chicken, fried without a coating", "803", "dry"],
    ["chicken-roasted", "chicken, roasted", "805", "dry"],
    ["chicken-stewed", "chicken, stewed or simmered, without the liquid", "855"],
  ]),
  ...of("animal", "meat", [
    ["lamb-grilled", "lamb, grilled", "1001", "dry"],
    ["lamb-mince-grilled", "lamb, minced, grilled", "1003", "dry"],
    ["lamb-roasted", "lamb, roasted", "1004", "dry"],
    ["lamb-braised", "lamb, braised, without the liquid", "1055"],
    ["liver-fried", "liver, fried", "1151", "dry"],
    ["liver-simmered", "liver, simmered, without the liquid", "1152"],
    ["offal-fried", "offal other than liver, fried", "1181", "dry"],
    ["offal-simmered", "offal other than liver, simmered, without the liquid", "1182"],
    ["pork-grilled", "pork, grilled", "1251", "dry"],
    ["pork-fried", "pork, fried without a coating", "1252", "dry"],
    ["pork-roasted", "pork, roasted", "1254", "dry"],
    ["pork-braised", "pork, braised, without the liquid", "1301"],
  ]),
  ...of("animal", "poultry", [
    ["turkey-roasted", "turkey, roasted", "1805", "dry"],
    ["turkey-simmered", "turkey, simmered, without the liquid", "1851"],
  ]),
  ...of("animal", "meat", [
    ["veal-grilled", "veal, grilled", "1951", "dry"],
    ["veal-fried", "veal, fried without a coating", "1952", "dry"],
    ["veal-roasted", "veal, roasted", "1954", "dry"],
    ["veal-braised", "veal, braised, without the liquid", "2001"],
  ]),
  ...of("animal", "fish", [
    ["lean-fish-baked", "lean fish (fat under 5 %), baked or grilled", "2301", "dry"],
    ["oily-fish-baked", "oily fish (fat over 5 %), baked or grilled", "2451", "dry"],
    ["oily-fish-poached", "oily fish (fat over 5 %), poached, without the liquid", "2551"],
    ["shellfish-grilled", "shellfish without its shell, grilled", "2753", "dry"],
    ["shellfish-fried", "shellfish without its shell, fried without a coating", "2755", "dry"],
    ["shellfish-simmered", "shellfish without its shell, simmered, without the liquid", "2761"],
  ]),
  ...of("plant", "vegetables", [
    ["greens-boiled", "greens and brassicas, boiled in little water, drained", "3004"],
    ["greens-boiled-from-frozen", "greens and brassicas, boiled from frozen, drained", "3019"],
    ["potatoes-boiled", "potatoes, peeled, boiled, drained", "3308"],
    ["roots-boiled", "roots, boiled in little water, drained", "3454"],
    ["roots-steamed", "roots, steamed", "3464", "steam"],
    ["roots-boiled-from-frozen", "roots, boiled from frozen, drained", "3469"],
    ["sweet-potatoes-baked", "sweet potatoes, baked in their skins", "3701", "dry"],
    ["vegetables-baked", "other vegetables, baked", "3771", "dry"],
    ["vegetables-boiled", "other vegetables, boiled in little water, drained", "3774"],
    ["vegetables-steamed", "other vegetables, steamed", "3784", "steam"],
    ["vegetables-stir-fried", "other vegetables, stir-fried", "3785", "dry"],
    ["vegetables-boiled-from-frozen", "other vegetables, boiled from frozen, drained", "3789"],
  ]),
];
