/**
 * For the developer of an app: a recipe from a page. The page's JSON-LD is read, scaled to a person's
 * portion, and written as JSON-LD again, safe to stand in a page of one's own.
 */
import { scale, sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { recipeFromJsonLd, toJsonLd } from "steelyard/interchange";

/** As the club's own site has it; an app gets it with fetch. */
const page = `<!doctype html>
<title>Training breakfast</title>
<script type="application/ld+json">
{
  "@context": "https://schema.org",
  "@graph": [
    { "@type": "WebSite", "name": "Rowing club" },
    {
      "@type": "Recipe",
      "name": "Training breakfast",
      "recipeYield": ["2", "2 servings"],
      "recipeIngredient": ["160 g rolled oats", "400 ml whole milk", "1 large banana, sliced", "honey to taste"],
      "recipeInstructions": [
        { "@type": "HowToStep", "text": "Simmer the oats in the milk." },
        { "@type": "HowToStep", "text": "Top with the banana." }
      ],
      "totalTime": "PT15M"
    }
  ]
}
</script>`;

// A browser's own DOM does this with document.querySelector('script[type="application/ld+json"]').textContent.
const [, json = ""] = /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(page) ?? [];
const { recipe, unclear, times } = recipeFromJsonLd(json, starterFoods);
if (!recipe) throw new Error("the page has no recipe that can be read");
console.log(`${recipe.name}, ${recipe.portions} portions, ${times.total ?? "?"} minutes`);
for (const { message } of unclear) console.log(`left out: ${message}`);

const { sheet: forHeavyweight } = scale(sheet(recipe, starterFoods), { energy: 900, portions: 1 });
const written = toJsonLd(forHeavyweight);
console.log(JSON.stringify({ yield: written.recipeYield, ingredients: written.recipeIngredient }, null, 1));
console.log(written.nutrition);

// No text of it can end the script that it stands in.
const safe = JSON.stringify(written).replaceAll("<", "\\u003c");
console.log(`<script type="application/ld+json"> of ${safe.length > 500 ? "one recipe" : "nothing"}`);
