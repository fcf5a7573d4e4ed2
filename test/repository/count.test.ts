import { expect, test } from 'vitest';
import { countReport, exitCode, merged } from '../support/count.ts';

const passed = { fullName: 'a', status: 'passed' as const };
const failed = { fullName: 'b', status: 'failed' as const };
const skipped = { fullName: 'c', status: 'skipped' as const, meta: { skipReason: 'no data' } };

function file(
  status: 'passed' | 'failed',
  ...assertionResults: (typeof passed | typeof failed | typeof skipped)[]
) {
  return { name: '/p/x.test.ts', status, assertionResults };
}

test('counts each kind, with the reason of a skip', () => {
  const counts = countReport({ testResults: [file('failed', passed, passed, failed, skipped)] }, '/p');
  expect(counts).toEqual({
    passed: 2,
    failed: 1,
    skipped: 1,
    lines: ['failed: x.test.ts: b', 'skipped: x.test.ts: c (no data)'],
  });
});

test('a file that does not load is a failure', () => {
  expect(countReport({ testResults: [file('failed')] }, '/p').failed).toBe(1);
  expect(countReport({ testResults: [file('failed', passed)] }, '/p').failed).toBe(1);
});

test.each([
  [{ passed: 1, failed: 0, skipped: 0, lines: [] }, 0, 0],
  [{ passed: 1, failed: 0, skipped: 3, lines: [] }, 0, 0],
  [{ passed: 1, failed: 1, skipped: 0, lines: [] }, 0, 1],
  [{ passed: 1, failed: 0, skipped: 0, lines: [] }, 1, 1],
  [{ passed: 0, failed: 0, skipped: 5, lines: [] }, 0, 1],
])('%o after runner code %i exits %i', (counts, runnerCode, code) => {
  expect(exitCode(counts, runnerCode)).toBe(code);
});

test('files that were run again count as they came out then, others as they were', () => {
  const other = { ...file('failed', passed), name: '/p/y.test.ts' };
  const report = merged(
    { testResults: [file('failed', passed), other] },
    { testResults: [file('passed', passed, passed)] },
  );
  expect(countReport(report, '/p')).toMatchObject({ passed: 3, failed: 1, lines: ['failed: y.test.ts'] });
});
