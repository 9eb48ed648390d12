import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with `N passed, N failed` (and skipped, where there are any) alone on a line. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      if (module.errors().length > 0) count.failed += 1;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === "passed" || state === "failed" || state === "skipped") count[state] += 1;
      }
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : "";
    // After the default reporter's own summary, which is written in the same turn.
    process.on("exit", () =>
      process.stdout.write(`\n${count.passed} passed, ${count.failed} failed${skipped}\n`),
    );
  }
}
