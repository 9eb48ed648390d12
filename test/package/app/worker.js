import { answers } from "./answers.js";
import { tryEval } from "./tryEval.js";

postMessage(JSON.stringify({ ...answers, eval: tryEval() }));
