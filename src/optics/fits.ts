// What was entered, held against its schema.
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';
import { PLAIN_FAULTS, type PlainFault } from './fault.ts';

/** A value through its schema; the fault that the schema names where it does not fit. */
export function fits<TOutput>(schema: v.GenericSchema<unknown, TOutput>, value: unknown): Result<TOutput, { readonly is: PlainFault }> {
  const result = v.safeParse(schema, value);
  if (result.success) return got(result.output);
  const { message } = result.issues[0];
  return failed({ is: PLAIN_FAULTS.find((one) => one === message) ?? 'does not fit' });
}
