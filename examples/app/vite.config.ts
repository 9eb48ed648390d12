import { defineConfig } from "vite";

export default defineConfig({
  // Finds the library beside this example; an app of its own installs it, and drops this line.
  resolve: { tsconfigPaths: true },
  build: {
    modulePreload: { polyfill: false },
    rolldownOptions: { input: { index: "index.html", card: "card.html" } },
  },
});
