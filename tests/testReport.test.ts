import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { counted, ofReport } from './testReport.ts';

test('what failed is named by its file, its title and the first line of its fault, a skipped test and a file that broke too', () => {
  const report = {
    numPassedTests: 1,
    numTotalTests: 3,
    testResults: [
      {
        name: resolve('tests/a.test.ts'),
        status: 'failed',
        message: '',
        assertionResults: [
          { fullName: 'holds', status: 'passed', failureMessages: [] },
          { fullName: 'does not', status: 'failed', failureMessages: ['expected 1 to be 2\n    at a.test.ts:3'] },
          { fullName: 'was left out', status: 'pending' },
        ],
      },
      { name: resolve('tests/b.test.ts'), status: 'failed', message: 'no such module\nat b', assertionResults: [] },
    ],
  };
  expect(ofReport(report)).toEqual({
    passed: 1,
    all: 3,
    failures: ['tests/a.test.ts: does not: expected 1 to be 2', 'tests/a.test.ts: was left out: pending', 'tests/b.test.ts: no such module'],
  });
});

test('a report that is not there is one failure', () => {
  expect(counted('/nowhere.json')).toMatchObject({ passed: 0, all: 1, failures: [expect.stringContaining('/nowhere.json')] });
});
