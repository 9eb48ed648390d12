/**
 * For the analyst whose figures outgrow one machine: a sheet's portion as coefficients in a query engine,
 * and portions by the million in SQL. Each row stands for itself, so that the statement runs as it is on
 * engines of many machines: split the targets into as many parts as you like, hand the few rows of
 * coefficients to each, and put the answers together. How many portions: `queryEngine.ts 10000000`.
 */
import { DuckDBInstance } from "@duckdb/node-api";
import { sheet } from "steelyard";
import { coefficients, portionsAt } from "steelyard/bulk";
import { starterFoods } from "steelyard/foods";
import { toRecords } from "steelyard/show";
import { oatPot, seedTopping } from "./recipes.ts";

const count = Number(process.argv[2] ?? 100_000);
const components = ["energy", "protein", "iron", "water"] as const;
const pot = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });

const connection = await (await DuckDBInstance.create(":memory:", { threads: "2" })).connect();
await connection.run(
  "create table coefficients (component text, from_factor double, to_factor double, fixed double, per_factor double)",
);
const rows = await connection.createAppender("coefficients");
for (const { component, from_factor, to_factor, fixed, per_factor } of toRecords(
  coefficients(pot, components),
)) {
  rows.appendVarchar(String(component));
  for (const figure of [from_factor, to_factor, fixed, per_factor])
    if (figure === null) rows.appendNull();
    else rows.appendDouble(Number(figure));
  rows.endRow();
}
rows.closeSync();

const portions = `
  with targets as (select i, 400 + i * 500.0 / ${count} as energy from range(${count}) t(i)),
  scaled as (
    select i, (energy - fixed) / per_factor as factor from targets, coefficients where component = 'energy'
  )
  select i, component, fixed + factor * per_factor as amount from scaled join coefficients
  on factor > from_factor and (to_factor is null or factor <= to_factor)`;

const began = performance.now();
const means = await connection.runAndReadAll(
  `select component, count(*)::int as portions, avg(amount) as mean from (${portions}) group by all order by all`,
);
for (const { component, portions, mean } of means.getRowObjects())
  console.log(`${component}: ${Number(mean).toFixed(4)} on average of ${portions}`);
if (process.argv[2]) console.log(`${((performance.now() - began) / 1000).toFixed(1)} s`);

const step = Math.ceil(count / 1000);
const sample = await connection.runAndReadAll(`select * from (${portions}) where i % ${step} = 0 order by i`);
const energy = Float64Array.from(
  { length: Math.ceil(count / step) },
  (_, k) => 400 + (k * step * 500) / count,
);
const ours = portionsAt(pot, { energy }, components, { silent: "accept" });
const off = sample.getRowObjects().filter(({ i, component, amount }) => {
  const column = ours.columns[component as (typeof components)[number]];
  const value = column?.value[Number(i) / step];
  return value !== undefined && Math.abs(Number(amount) - value) > 1e-11 * Math.abs(value);
});
console.log(`${energy.length} portions held against portionsAt: ${off.length} of their figures differ`);
connection.closeSync();
