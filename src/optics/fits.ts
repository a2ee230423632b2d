// What was entered, held against its schema.
import * as v from 'valibot';
import { failed, got, type Result } from '../result.ts';

/** A value through its schema; the schema's own sentence where it does not fit. */
export function fits<TOutput>(schema: v.GenericSchema<unknown, TOutput>, value: unknown): Result<TOutput> {
  const result = v.safeParse(schema, value);
  return result.success ? got(result.output) : failed(result.issues[0].message);
}
