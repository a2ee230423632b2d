// Something that happened to a body, lens or converter after which its values deserve another look.
import * as v from 'valibot';
import { fault } from '../kit/fault.ts';
import { Id } from '../kit/words.ts';
import { Moment } from '../units.ts';

export const KitNote = v.object({
  id: v.pipe(v.string(), v.minLength(1)),
  at: Moment,
  /** The body, lens or converter it happened to. */
  of: Id,
  what: v.picklist(['firmware', 'service']),
  note: v.pipe(v.string(), v.maxLength(2000, fault('note too long'))),
});
export type KitNote = v.InferOutput<typeof KitNote>;
