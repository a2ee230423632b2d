// What photographs of one situation showed, as the logbook keeps it beside the sweeps: the figures, and under which name their two
// crops lie. The crops themselves are pictures and are kept apart; they may be erased or lost, and the figures stand without them.
import * as v from 'valibot';
import { Proof } from '../photographs/proof.ts';
import { Moment } from '../storedUnits.ts';
import { Subject } from '../sweep/plan.ts';

const Name = v.pipe(v.string(), v.minLength(1));

export const ProofRecord = v.object({
  id: Name,
  /** When it was kept; when the pictures were taken, the proof says. */
  at: Moment,
  /** Read off pictures of the practice camera: kept apart from what a real body does. */
  practice: v.boolean(),
  /** Names, focal length and distance as they stood when it was kept. */
  subject: Subject,
  proof: Proof,
  /** Of the crops; null where none were kept. */
  crops: v.nullable(Name),
});
export type ProofRecord = v.InferOutput<typeof ProofRecord>;
