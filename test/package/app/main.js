import { answers } from "./answers.js";
import { tryEval } from "./tryEval.js";

function show(name, text) {
  const output = document.createElement("output");
  output.id = name;
  output.textContent = text;
  document.body.append(output);
}

const worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
worker.onmessage = ({ data }) => show("worker", data);
worker.onerror = ({ message }) => show("worker", message);
show("page", JSON.stringify({ ...answers, eval: tryEval() }));
