// How the optics answers when what was entered cannot be reckoned with: a value, or one sentence for the person that
// says what to do. Nothing here throws.
import * as v from 'valibot';

export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly say: string };

export const answer = <T>(value: T): Answer<T> => ({ ok: true, value });
export const cannot = (say: string): Answer<never> => ({ ok: false, say });

/** A value through its schema; the schema's own sentence where it does not fit. */
export function fits<TOutput>(schema: v.GenericSchema<unknown, TOutput>, value: unknown): Answer<TOutput> {
  const result = v.safeParse(schema, value);
  return result.success ? answer(result.output) : cannot(result.issues[0].message);
}
