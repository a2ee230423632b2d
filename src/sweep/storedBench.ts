// How a bench lies in a journal. Its frame alone is checked with every plan that is read, so that a panel that only runs
// a sweep need not know every kind of reading; what is in it is checked by `benchFrom` where it is shown.
import * as v from 'valibot';

export const StoredBench = v.object({
  ticked: v.array(v.string()),
  readings: v.array(v.unknown()),
});
export type StoredBench = v.InferOutput<typeof StoredBench>;
