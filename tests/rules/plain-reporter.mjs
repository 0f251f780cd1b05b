import { appendFileSync } from "node:fs";

/**
 * Prints the outcome on one plain line, "N passed, N failed", and, where HORNWEAVE_COUNTS names a
 * file, adds the three numbers to it. A file that could not be loaded counts as one failure.
 */
class PlainReporter {
  /**
   * @param {readonly import("vitest/node").TestModule[]} modules - every test file that ran
   * @param {readonly unknown[]} strayErrors - errors outside any test
   */
  onTestRunEnd(modules, strayErrors) {
    const counts = { passed: 0, failed: strayErrors.length, skipped: 0 };
    for (const module of modules) {
      counts.failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        counts[state === "pending" ? "failed" : state] += 1;
      }
    }
    const { passed, failed, skipped } = counts;
    const tail = skipped > 0 ? `, ${skipped} skipped` : "";
    process.stdout.write(`${passed} passed, ${failed} failed${tail}\n`);
    const file = process.env.HORNWEAVE_COUNTS;
    if (file) appendFileSync(file, `${passed} ${failed} ${skipped}\n`);
  }
}

export default PlainReporter;
