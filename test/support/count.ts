/**
 * `count.ts REPORT EXIT_CODE [AGAIN]`: counts of a Vitest JSON report for `.ci/run`, with the files of a second one in
 * place of the first's where there is one. Prints failures, then each skipped test
 * with its reason, then `N passed, N failed, N skipped` as the last line; exits 1 unless all is well.
 */
import { existsSync, readFileSync } from 'node:fs';
import { relative } from 'node:path';

interface Assertion {
  fullName: string;
  status: 'passed' | 'failed' | 'skipped' | 'pending' | 'todo' | 'disabled';
  meta?: { skipReason?: string };
}

interface FileReport {
  name: string;
  status: 'passed' | 'failed';
  assertionResults: Assertion[];
}

export interface Counts {
  passed: number;
  failed: number;
  skipped: number;
  /** Failures and skips in words. */
  lines: string[];
}

/** Counts a report; a file that fails without a failing test (it does not load) is one failure. */
export function countReport(report: { testResults: FileReport[] }, root: string = process.cwd()): Counts {
  const counts: Counts = { passed: 0, failed: 0, skipped: 0, lines: [] };
  for (const file of report.testResults) {
    const where = relative(root, file.name);
    const failedBefore = counts.failed;
    for (const assertion of file.assertionResults) countAssertion(counts, assertion, where);
    if (file.status === 'failed' && counts.failed === failedBefore) {
      counts.failed += 1;
      counts.lines.push(`failed: ${where}`);
    }
  }
  return counts;
}

function countAssertion(counts: Counts, assertion: Assertion, where: string): void {
  const { fullName, status, meta } = assertion;
  if (status === 'passed') {
    counts.passed += 1;
  } else if (status === 'failed') {
    counts.failed += 1;
    counts.lines.push(`failed: ${where}: ${fullName}`);
  } else {
    counts.skipped += 1;
    counts.lines.push(`skipped: ${where}: ${fullName} (${meta?.skipReason ?? 'no reason given'})`);
  }
}

/** A report in which the files that were run again stand as they came out then. */
export function merged(
  report: { testResults: FileReport[] },
  again: { testResults: FileReport[] },
): { testResults: FileReport[] } {
  const later = new Map(again.testResults.map((file) => [file.name, file]));
  return { testResults: report.testResults.map((file) => later.get(file.name) ?? file) };
}

/** Exit code of the whole run: zero only where tests passed, none failed and the runner itself was content. */
export function exitCode(counts: Counts, runnerCode: number): number {
  return counts.passed > 0 && counts.failed === 0 && runnerCode === 0 ? 0 : 1;
}

if (import.meta.main) {
  const [reportFile = '', runnerCode = '1', againFile = ''] = process.argv.slice(2);
  const read = (file: string) => JSON.parse(readFileSync(file, 'utf8'));
  const counts = existsSync(reportFile)
    ? countReport(existsSync(againFile) ? merged(read(reportFile), read(againFile)) : read(reportFile))
    : {
        passed: 0,
        failed: 1,
        skipped: 0,
        lines: [`failed: no test report at ${reportFile} (did the build fail?)`],
      };
  if (runnerCode !== '0' && counts.failed === 0) {
    counts.failed += 1;
    counts.lines.push(`failed: the test runner ended with code ${runnerCode} outside any test`);
  }
  for (const line of counts.lines) console.log(line);
  console.log(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
  process.exitCode = exitCode(counts, Number(runnerCode));
}
