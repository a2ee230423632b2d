// What is told on the start screen is judged at once, by the rules of the kit, though it goes there only when a sweep begins.
import * as v from 'valibot';
import { Distance, FocalLength } from '../../kit/kit.ts';
import { Name } from '../../kit/words.ts';
import { Scale } from '../../sweep/storedScale.ts';
import { faultsIn } from '../session/faults.ts';
import { DONE, failed } from '../../result.ts';
import type { Described, Description } from '../session/session.ts';

const RULES = v.object({
  name: v.optional(Name),
  focalLength: v.optional(FocalLength),
  distance: v.optional(v.nullable(Distance)),
  scale: v.optional(Scale),
});

export function checked(told: Description): Described {
  const called = told.body ?? told.lens;
  const result = v.safeParse(RULES, { ...told, ...(called && 'name' in called && { name: called.name }) });
  if (result.success) return DONE;
  const [fault] = faultsIn(result.issues);
  return failed({ of: null, sentence: fault?.sentence ?? '' });
}
