// What is told on the start screen is judged at once, by the rules of the kit, though it goes there only when a sweep begins.
import * as v from 'valibot';
import { Distance, FocalLength } from '../../kit/kit.ts';
import { Name } from '../../kit/words.ts';
import { Scale } from '../../sweep/scale.ts';
import { faultsIn } from '../session/faults.ts';
import type { Described, Description } from '../session/session.ts';

const RULES = v.object({
  body: v.optional(v.union([v.object({ name: Name }), v.object({ id: v.string() })])),
  lens: v.optional(v.union([v.object({ name: Name }), v.object({ id: v.string() })])),
  focalLength: v.optional(FocalLength),
  distance: v.optional(v.nullable(Distance)),
  scale: v.optional(Scale),
});

export function checked(told: Description): Described {
  const result = v.safeParse(RULES, told);
  if (result.success) return { ok: true };
  const named = [told.body, told.lens].flatMap((called) => (called && 'name' in called ? v.safeParse(Name, called.name).issues ?? [] : []));
  const [fault] = faultsIn(named.length > 0 ? named : result.issues);
  return { ok: false, fault: { of: null, sentence: fault?.sentence ?? '' } };
}
