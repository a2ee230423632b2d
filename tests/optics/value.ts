// Answers in tests: the value, or a failure that shows the fault; and the fault alone.
import type { Result } from '../../src/result.ts';

export function value<T>(given: Result<T, unknown>): T {
  if (given.ok) return given.value;
  throw new Error(JSON.stringify(given.fault));
}

export const fault = <Fault>(given: Result<unknown, Fault>): Fault | { readonly value: unknown } => (given.ok ? { value: given.value } : given.fault);
