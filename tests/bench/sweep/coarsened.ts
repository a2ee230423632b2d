// A body or a person that tells less: outcomes of a band model taken together, so that neither the belief nor the
// look-ahead can use what is not told.
import type { BandModel } from '../../../src/sweep/belief/bandModel.ts';

/** Groups of outcomes that cannot be told apart. */
export type Merging = readonly (readonly number[])[];

/** Without arrows and without grades: in, out. */
export const INOUT: Merging = [[0], [1, 2, 3]];
/** With arrows, without grades: in, out with the centre above, out with it below. */
export const SIDES_ONLY: Merging = [[0], [1, 3, 5], [2, 4, 6]];

export function coarsened(model: BandModel, merging: Merging): BandModel {
  return {
    ...model,
    outcomes: merging.length,
    weigh: (stimulus, seen, lights) =>
      model.weigh(
        stimulus,
        seen.flatMap((group) => merging[group] ?? []),
        lights,
      ),
    predicting(lights) {
      const n = lights.which.length;
      const predict = model.predicting(lights);
      return (stimulus, into) => {
        const all = new Float64Array(model.outcomes * n);
        predict(stimulus, all);
        into.fill(0);
        merging.forEach((group, index) => {
          for (const outcome of group) for (let k = 0; k < n; k++) into[index * n + k]! += all[outcome * n + k]!;
        });
      };
    },
  };
}
