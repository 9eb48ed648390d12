export { type Phrase, type Phrases, phrases } from "./show/phrases.ts";
