import { text, value, word } from "../document/leaves.ts";
import { isRecord } from "../document/safe.ts";
import { byName, choice, fields, leaf, once, optional, type Schema } from "../document/schema.ts";
import type { LabelInput } from "./labelDocument.ts";
import { aboutFood } from "./schema.ts";

/** The shape of a label document; what its figures say is read afterwards, one by one. */
export const labelSchema: () => Schema<LabelInput> = /* @__PURE__ */ once(() => {
  const written = text(100);
  const data = fields<Exclude<LabelInput["per"], string>>({ value: value({ above: 0 }), unit: text(50) });
  return fields<LabelInput>({
    ...aboutFood(),
    style: word(["us", "eu"]),
    per: choice<LabelInput["per"]>([written, data], (given) => (isRecord(given) ? data : written), "text"),
    figures: byName(leaf("a figure", { type: ["number", "string"] }, isPresent, (given) => given)) as Schema<
      LabelInput["figures"]
    >,
    source: optional(text()),
  });
});

function isPresent(given: unknown): given is unknown {
  return given !== undefined;
}
