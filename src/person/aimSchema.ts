import * as z from "zod/mini";
import { readShare } from "../measure/share.ts";
import { push, wordSchema } from "../number/document.ts";
import { SteelyardError } from "../number/error.ts";
import { compare, type Fraction, type Value } from "../number/fraction.ts";
import type { Aim } from "./aim.ts";
import { readGramsPer1000kcal, readGramsPerKg, readKcal, readPercent } from "./aimValues.ts";
import { energyEquations } from "./equations/all.ts";
import type { EquationId } from "./equations/equation.ts";
import { readMass } from "./size.ts";

/** The schema of an aim, made on first use. */
export function aimSchema(): z.ZodMiniType<Aim> {
  made ??= makeAimSchema();
  return made;
}

let made: z.ZodMiniType<Aim> | undefined;

function makeAimSchema(): z.ZodMiniType<Aim> {
  const rate = oneOf({
    percent: readable(readPercent),
    kcal: readable(readKcal),
    perWeek: readable(readMass),
  });
  const gramsPerKg = wantedSchema(readable(readGramsPerKg), readGramsPerKg);
  const macro = oneOf({
    perKg: gramsPerKg,
    perKgLean: gramsPerKg,
    share: wantedSchema(
      readable((v) => readShare(v, "aim-malformed")),
      (v) => readShare(v, "aim-malformed"),
    ),
  });
  const weight = z.custom<Aim["weight"]>().check((ctx) => {
    if (ctx.value === "hold") return;
    if (typeof ctx.value !== "object" || ctx.value === null) {
      push(ctx, 'expected "hold", { lose } or { gain }', 'write "hold", or { lose: { percent: 15 } }');
      return;
    }
    pass(oneOf({ lose: rate, gain: rate }), ctx);
  });
  const ids = Object.keys(energyEquations) as [EquationId, ...EquationId[]];
  return z.strictObject({
    weight,
    protein: z.optional(macro),
    fat: z.optional(macro),
    carbohydrate: z.optional(macro),
    fibre: z.optional(z.strictObject({ per1000kcal: readable(readGramsPer1000kcal) })),
    equation: z.optional(wordSchema(ids)),
  }) as unknown as z.ZodMiniType<Aim>;
}

interface Context {
  readonly value: unknown;
  readonly issues: z.core.$ZodRawIssue[];
}

/** Hands a value on to another schema, its faults with it. */
function pass(schema: z.ZodMiniType<unknown>, ctx: Context): void {
  const read = schema.safeParse(ctx.value);
  if (read.success) return;
  for (const issue of read.error.issues)
    ctx.issues.push({ ...issue, input: ctx.value } as z.core.$ZodRawIssue);
}

/** An object with exactly one of some fields. */
function oneOf(fields: Readonly<Record<string, z.ZodMiniType<unknown>>>): z.ZodMiniType<unknown> {
  const names = Object.keys(fields);
  const shape = Object.fromEntries(
    names.map((name) => [name, z.optional(fields[name] as z.ZodMiniType<unknown>)]),
  );
  const schema = z.strictObject(shape);
  return z.custom<unknown>().check((ctx) => {
    pass(schema as z.ZodMiniType<unknown>, ctx);
    if (typeof ctx.value !== "object" || ctx.value === null) return;
    const given = names.filter((name) => (ctx.value as Record<string, unknown>)[name] !== undefined);
    if (given.length !== 1) {
      push(
        ctx,
        given.length === 0 ? "nothing asked" : `${given.join(" and ")} at once`,
        `give one of ${names.join(", ")}`,
      );
    }
  });
}

function wantedSchema(one: z.ZodMiniType<Value>, read: (value: Value) => Fraction): z.ZodMiniType<unknown> {
  const band = z.strictObject({ least: z.optional(one), most: z.optional(one) });
  return z.custom<unknown>().check((ctx) => {
    const { value } = ctx;
    if (typeof value !== "object" || value === null || "toFixed" in value) return pass(one, ctx);
    const before = ctx.issues.length;
    pass(band as z.ZodMiniType<unknown>, ctx);
    if (ctx.issues.length > before) return;
    const { least, most } = value as { least?: Value; most?: Value };
    if (least === undefined && most === undefined)
      push(ctx, "a band without limits", "give least, most or both");
    if (least !== undefined && most !== undefined && compare(read(least), read(most)) > 0) {
      push(ctx, "least is more than most", "give the limits in rising order");
    }
  });
}

function readable(read: (value: Value) => unknown): z.ZodMiniType<Value> {
  return z.custom<Value>().check((ctx) => {
    try {
      read(ctx.value);
    } catch (error) {
      if (!(error instanceof SteelyardError)) throw error;
      push(ctx, error.faults[0]?.message ?? "", error.hint, "aim-malformed");
    }
  });
}
