import { relative, sep } from "node:path";
import type { Reporter, TestModule, TestResult } from "vitest/node";
import ledger from "./ledger.json" with { type: "json" };
import { isLong } from "./runs.ts";

/**
 * Tells what each folder of tests took beside what the ledger allows it, and ends a run with `N passed, N
 * failed` alone on the last line. What was skipped stands before it, by name.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length };
    const skipped: string[] = [];
    const took = new Map<string, number>();
    for (const module of modules) {
      const folder = folderOf(module.moduleId);
      took.set(folder, (took.get(folder) ?? 0) + module.diagnostic().duration);
      if (module.errors().length > 0) count.failed += 1;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed" || state === "failed") count[state] += 1;
        if (state === "skipped") skipped.push(`skipped: ${test.fullName}${whyOf(test.result())}`);
      }
    }
    const lines = [...skipped, ...told(took), `${count.passed} passed, ${count.failed} failed`];
    // After the default reporter's own summary, which is written in the same turn.
    process.on("exit", () => process.stdout.write(`\n${lines.join("\n")}\n`));
  }
}

/** Seconds by folder, where the whole was run; it judges nothing, since other work on the machine counts too. */
function told(took: ReadonlyMap<string, number>): string[] {
  if (isLong || took.size < Object.keys(ledger).length) return [];
  const allowed: { readonly [folder: string]: number | undefined } = ledger;
  const rows = [...took].sort(([, a], [, b]) => b - a);
  const seconds = (ms: number): string => (ms / 1000).toFixed(1).padStart(6);
  const total = rows.reduce((sum, [, ms]) => sum + ms, 0);
  const all = Object.values(ledger).reduce((sum, each) => sum + each, 0);
  return [
    "seconds of tests by folder, and what test/ledger.json allows:",
    ...rows.map(
      ([folder, ms]) => `${seconds(ms)} of ${String(allowed[folder] ?? "none").padStart(4)}  ${folder}`,
    ),
    `${seconds(total)} of ${String(all).padStart(4)}  in all`,
  ];
}

/** The folder of a test file, first step below `test/`; `.` for those that stand there. */
export function folderOf(file: string): string {
  const [first = ".", ...rest] = relative(import.meta.dirname, file).split(sep);
  return rest.length === 0 ? "." : first;
}

/** The reason that a test gave for skipping itself; a suite says its own in its name. */
function whyOf(result: TestResult): string {
  return result.state === "skipped" && result.note ? ` (${result.note})` : "";
}
