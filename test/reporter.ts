import type { Reporter, TestModule, TestResult } from "vitest/node";

/** Ends a run with `N passed, N failed` alone on the last line. What was skipped stands before it, by name. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length };
    const skipped: string[] = [];
    for (const module of modules) {
      if (module.errors().length > 0) count.failed += 1;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed" || state === "failed") count[state] += 1;
        if (state === "skipped") skipped.push(`skipped: ${test.fullName}${whyOf(test.result())}`);
      }
    }
    // After the default reporter's own summary, which is written in the same turn.
    process.on("exit", () =>
      process.stdout.write(
        `\n${[...skipped, `${count.passed} passed, ${count.failed} failed`].join("\n")}\n`,
      ),
    );
  }
}

/** The reason that a test gave for skipping itself; a suite says its own in its name. */
function whyOf(result: TestResult): string {
  return result.state === "skipped" && result.note ? ` (${result.note})` : "";
}
