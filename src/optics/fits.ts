// What was entered, held against its schema.
import * as v from 'valibot';
import { answered, cannot, type Answer } from '../result.ts';
import { PLAIN_FAULTS, type PlainFault } from './fault.ts';

/** A value through its schema; the fault that the schema names where it does not fit. */
export function fits<TOutput>(schema: v.GenericSchema<unknown, TOutput>, value: unknown): Answer<TOutput, { readonly is: PlainFault }> {
  const result = v.safeParse(schema, value);
  if (result.success) return answered(result.output);
  const { message } = result.issues[0];
  return cannot({ is: PLAIN_FAULTS.find((one) => one === message) ?? 'does not fit' });
}
