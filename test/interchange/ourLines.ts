/**
 * Lines of our own as people write them, each with its amounts, food words and the rest as we read them:
 * common practice, no source. An amount is `least[–most] unit[ each …][ + …][~]`.
 */
export interface OurLine {
  readonly text: string;
  readonly kind?: "no-amount" | "heading" | "other";
  readonly amounts?: string;
  readonly food?: string;
  readonly state?: readonly string[];
  readonly preparation?: readonly string[];
  readonly alternatives?: readonly string[];
  readonly optional?: true;
  readonly note?: string;
}

// biome-ignore format: a line each
export const ourLines: readonly OurLine[] = [
  { text: "2 x 400g tins chopped tomatoes", amounts: "2 tin each 400 g", food: "tomatoes", preparation: ["chopped"] },
  { text: "1 (14.5 oz) can diced tomatoes, undrained", amounts: "1 can each 14.5 oz", food: "tomatoes", preparation: ["diced"], note: "undrained" },
  { text: "One 15-ounce can black beans, rinsed and drained", amounts: "1 can each 15 oz", food: "black beans", preparation: ["rinsed", "drained"] },
  { text: "1½ cups plus 2 tablespoons all-purpose flour", amounts: "1 1/2 cup + 2 tbsp", food: "all-purpose flour" },
  { text: "1 lb 4 oz stewing beef, cut into 2-inch cubes", amounts: "1 lb + 4 oz", food: "stewing beef", preparation: ["cut into 2-inch cubes"] },
  { text: "- 3/4-1 cup sugar", amounts: "3/4–1 cup", food: "sugar" },
  { text: "2 to 3 tablespoons olive oil, plus extra for drizzling", amounts: "2–3 tbsp", food: "olive oil", note: "plus extra for drizzling" },
  { text: "about 2 cups water", amounts: "2 cup~", food: "water" },
  { text: "a handful of fresh parsley, chopped", amounts: "1 handful~", food: "parsley", state: ["fresh"], preparation: ["chopped"] },
  { text: "2 large free-range eggs, beaten", amounts: "2 large", food: "eggs", state: ["free-range"], preparation: ["beaten"] },
  { text: "* 1 bunch spring onions, trimmed and sliced", amounts: "1 bunch", food: "spring onions", preparation: ["trimmed", "sliced"] },
  { text: "1 stick (113g) unsalted butter, at room temperature", amounts: "1 stick ; 113 g", food: "butter", state: ["unsalted"], note: "at room temperature" },
  { text: "Juice of half a lemon", amounts: "1/2 lemon", food: "lemon juice" },
  { text: "Salt & pepper to taste", kind: "no-amount", food: "salt and pepper", note: "to taste" },
  { text: "freshly ground black pepper", kind: "no-amount", food: "black pepper", preparation: ["freshly ground"] },
  { text: "4 sprigs thyme", amounts: "4 sprig", food: "thyme" },
  { text: "1 thumb-sized piece of ginger, peeled and grated", amounts: "1 piece", food: "ginger", preparation: ["peeled", "grated"] },
  { text: "250 g/9 oz plain flour, sifted", amounts: "250 g ; 9 oz", food: "plain flour", preparation: ["sifted"] },
  { text: "1 x 2cm piece fresh ginger", amounts: "1 piece each 2 cm", food: "ginger", state: ["fresh"] },
  { text: "1 heaped tsp ground cumin", amounts: "1 tsp", food: "cumin", state: ["ground"] },
  { text: "Vegetable oil, for deep frying", kind: "no-amount", food: "vegetable oil", note: "for deep frying" },
  { text: "500g beef mince (10% fat)", amounts: "500 g", food: "beef mince", note: "10% fat" },
  { text: "2% milk, 1 cup", amounts: "1 cup", food: "2% milk" },
  { text: "6 slices of bread", amounts: "6 slice", food: "bread" },
  { text: "1 can of coconut milk (400 ml)", amounts: "1 can each 400 ml", food: "coconut milk" },
  { text: "half a tin (200 g) of chickpeas", amounts: "1/2 tin ; 200 g", food: "chickpeas" },
  { text: "1/2 red onion, finely diced", amounts: "1/2 null", food: "red onion", preparation: ["finely diced"] },
  { text: "a dozen eggs", amounts: "12 null", food: "eggs" },
  { text: "1 T sugar", amounts: "1 tbsp", food: "sugar" },
  { text: "½ tsp each salt and pepper", amounts: "1/2 tsp", food: "salt and pepper", note: "each" },
  { text: "100 g dark chocolate (70%), roughly chopped", amounts: "100 g", food: "dark chocolate", preparation: ["roughly chopped"], note: "70%" },
  { text: "4 chicken thighs, bone-in, skin-on (about 1 kg)", amounts: "4 null ; 1 kg~", food: "chicken thighs", state: ["bone-in", "skin-on"] },
  { text: "Flour - 2 cups", amounts: "2 cup", food: "flour" },
  { text: "Onion: 1, chopped", amounts: "1 null", food: "onion", preparation: ["chopped"] },
  { text: "3 cups chicken broth or water", amounts: "3 cup", food: "chicken broth", alternatives: ["water"] },
  { text: "1 quart chicken or vegetable stock", amounts: "1 quart", food: "chicken stock", alternatives: ["vegetable stock"] },
  { text: "1 tablespoon white or cider vinegar", amounts: "1 tbsp", food: "white vinegar", alternatives: ["cider vinegar"] },
  { text: "200 g lentils, red or green", amounts: "200 g", food: "red lentils", alternatives: ["green lentils"] },
  { text: "1 cup basmati or jasmine rice", amounts: "1 cup", food: "basmati rice", alternatives: ["jasmine rice"] },
  { text: "500 g boneless chicken breast or thigh", amounts: "500 g", food: "chicken breast", state: ["boneless"], alternatives: ["chicken thigh"] },
  { text: "500 g beef or lamb mince", amounts: "500 g", food: "beef mince", alternatives: ["lamb mince"] },
  { text: "2 tbsp butter or olive oil", amounts: "2 tbsp", food: "butter", alternatives: ["olive oil"] },
  { text: "Porridge for two", kind: "heading" },
  { text: "Pancakes (serves 4)", kind: "heading" },
  { text: "Serves 4", kind: "other" },
  { text: "baking paper", kind: "other" },
  { text: "A large casserole dish", kind: "other" },
  { text: "For the topping:", kind: "heading" },
  { text: "## Filling", kind: "heading" },
  { text: "**Sauce**", kind: "heading" },
  { text: "Preheat the oven to 180C", kind: "other" },
  { text: "You can leave this out if you are in a hurry.", kind: "other" },
  { text: "1 packet (7g) dried yeast", amounts: "1 packet each 7 g", food: "yeast", state: ["dried"] },
  { text: "8 oz. cream cheese, softened", amounts: "8 oz", food: "cream cheese", preparation: ["softened"] },
  { text: "2-4 small red chillies, deseeded (optional)", amounts: "2–4 small", food: "red chillies", preparation: ["deseeded"], optional: true },
  { text: "1 cup packed light brown sugar", amounts: "1 cup", food: "light brown sugar", preparation: ["packed"] },
  { text: "Two 8-ounce salmon fillets", amounts: "2 null each 8 oz", food: "salmon fillets" },
  { text: "4 (6 ounce) skinless salmon fillets", amounts: "4 null each 6 oz", food: "salmon fillets", state: ["skinless"] },
  { text: "5-6 large garlic cloves", amounts: "5–6 clove", food: "garlic" },
  { text: "2 chopped cloves of garlic", amounts: "2 clove", food: "garlic", preparation: ["chopped"] },
  { text: "1/4 of a cauliflower", amounts: "1/4 null", food: "cauliflower" },
  { text: "1,5 dl milk", amounts: "1.5 dl", food: "milk" },
  { text: "20 g + 10 g butter", amounts: "20 g + 10 g", food: "butter" },
  { text: "a good pinch of salt", amounts: "1 pinch~", food: "salt" },
  { text: "a little milk", kind: "no-amount", food: "milk", note: "a little" },
  { text: "extra virgin olive oil", kind: "no-amount", food: "extra virgin olive oil" },
  { text: "1 egg + 1 egg yolk", amounts: "1 null", food: "egg", note: "plus 1 egg yolk" },
  { text: "between 1 and 2 kg potatoes", amounts: "1–2 kg", food: "potatoes" },
  { text: "half-inch slices of stale bread", kind: "no-amount", food: "half-inch slices of stale bread" },
];
