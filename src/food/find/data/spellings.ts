/**
 * One word for each thing that both Englishes, or two spellings, have words for; singular. Common
 * practice, no source. Foods of several words stand in `kitchenNames.ts`.
 */
const pairs = `
aubergine eggplant
brinjal eggplant
courgette zucchini
rocket arugula
beetroot beet
swede rutabaga
capsicum pepper
chilli chili
chilly chili
chile chili
chilie chili
chily chili
yoghurt yogurt
yoghourt yogurt
soya soy
omelette omelet
doughnut donut
fibre fiber
flavour flavor
flavoured flavored
colour color
sulphured sulfured
sulphate sulfate
skimmed skim
tinned canned
tin can
prawn shrimp
aniseed anise
linseed flaxseed
maize corn
sweetcorn corn
cornflour cornstarch
mangetout snowpea
garbanzo chickpea
cilantro coriander
treacle molasses
ketchup catsup
catchup catsup
mayo mayonnaise
whisky whiskey
gherkin pickle
wholemeal wholewheat
wholegrain wholewheat
parmigiano parmesan
parmigiana parmesan
parmezan parmesan
parm parmesan
pecorino romano
haricot navy
groundnut peanut
pak bok
pok bok
pawpaw papaya
satsuma tangerine
clementine tangerine
mandarin tangerine
gelatine gelatin
filet fillet
szechuan sichuan
tumeric turmeric
cinamon cinnamon
veggie vegetable
veg vegetable
speck bacon
lardon bacon
calamari squid
`;

/** Spellings, each with the one that the library reads it as. */
export const foodSpellings: ReadonlyMap<string, string> = new Map(
  pairs
    .trim()
    .split("\n")
    .map((pair) => pair.split(" ") as [string, string])
    .filter(([from, to]) => from !== to),
);
