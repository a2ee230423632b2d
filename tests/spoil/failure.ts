// How a test failed: by an assertion of ours, by an error that something threw, or by time.
export interface Failure {
  readonly by: 'assertion' | 'error' | 'time';
  readonly file: string;
  readonly test: string;
  readonly said: string;
}

interface Thrown {
  readonly name?: string;
  readonly message: string;
  readonly cause?: unknown;
}

export function failureOf(file: string, test: string, errors: readonly Thrown[]): Failure {
  const [first] = errors;
  const by = errors.some(isAssertion) ? 'assertion' : /timed out in \d+ms/.test(first?.message ?? '') ? 'time' : 'error';
  return { by, file, test, said: (first?.message ?? '').split('\n')[0]?.slice(0, 160) ?? '' };
}

/** A property that is drawn throws an error of its own, whose cause is the assertion; a snapshot says by its sentence that it differs. */
function isAssertion(error: unknown): boolean {
  if (typeof error !== 'object' || error === null) return false;
  const { name, message, cause } = error as Thrown;
  return name === 'AssertionError' || /^Snapshot .* mismatched$/.test(message ?? '') || isAssertion(cause);
}
