// What a run of vitest says of itself in its report: how many tests passed, and which did not and why, so that the last lines of a long
// run name them.
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';

export interface Counted {
  readonly passed: number;
  /** Those that were skipped among them. */
  readonly all: number;
  /** A line each: the file, the test, the first line of what went wrong. */
  readonly failures: readonly string[];
}

interface Report {
  readonly numPassedTests: number;
  readonly numTotalTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly message: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string; readonly failureMessages?: readonly string[] }[];
  }[];
}

/** A report that cannot be read is one failure. */
export function counted(file: string): Counted {
  try {
    return ofReport(JSON.parse(readFileSync(file, 'utf8')) as Report);
  } catch {
    return { passed: 0, all: 1, failures: [`${file}: no report to read`] };
  }
}

export function ofReport({ numPassedTests, numTotalTests, testResults }: Report): Counted {
  const failures = testResults.flatMap(({ name, status, message, assertionResults }) => {
    const file = relative('.', name);
    const failed = assertionResults.filter((one) => one.status !== 'passed');
    if (failed.length === 0 && status === 'failed') return [`${file}: ${firstLine(message)}`];
    return failed.map((one) => `${file}: ${one.fullName}: ${firstLine(one.failureMessages?.[0] ?? one.status)}`);
  });
  return { passed: numPassedTests, all: numTotalTests, failures };
}

function firstLine(message: string): string {
  return message.trim().split('\n', 1)[0] ?? '';
}
