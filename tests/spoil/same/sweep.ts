// Changes of src/sweep from which nothing follows, and why.
import type { Same } from './same.ts';

export const SWEEP: readonly Same[] = [
  {
    file: 'src/sweep/belief/accounts.ts',
    line: 'for (let k = 0; k < which.length; k++) {',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: '(values.length - 1) * POINTS > FINEST',
    after: '(FINEST + 1)',
    why: 'The number of points beside it is even, and so is the bound.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let a = first; a < points; a += apart) {',
    after: '<=',
    why: 'A low edge at the end of the grid has no high edge above it.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let at = 0; at < distances.length; at++) {',
    after: '1',
    why: 'No hold lies so far below a band that the first distance is asked for.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let at = 0; at < distances.length; at++) {',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let at = 0; at < looks.length; at++) {',
    after: '1',
    why: 'No hold lies so far inside a band that the first distance is asked for.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let at = 0; at < looks.length; at++) {',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let k = 0; k < which.length; k++) {',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/bandModel.ts',
    line: 'for (let one = 0; one < lamps; one++) looking[one]',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/criteria.ts',
    line: 'for (let k = 0; k < joint.length; k++) if (joint[k]! > 0)',
    after: '<=',
    why: 'Past the end there is no chance, which is not above nought.',
  },
  {
    file: 'src/sweep/belief/grid.ts',
    line: 'for (let k = 0; k < posterior.mass.length; k++) {',
    after: '<=',
    why: 'Past the end there is no chance, which is not above the floor.',
  },
  {
    file: 'src/sweep/belief/grid.ts',
    line: 'for (let k = 0; k < chances.length; k++) {',
    after: '<=',
    why: 'Past the end no quantile lies below what is no number.',
  },
  {
    file: 'src/sweep/belief/lights.ts',
    line: 'for (let at = 0; at < all.length; at++) all[at] = shares[at % shares.length]!;',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/lights.ts',
    line: 'for (let k = 0; k < which.length; k++) {',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/lights.ts',
    line: 'for (let at = 0; at < after.edges.length; at++)',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/lights.ts',
    line: 'for (let at = 0; at < after.lamp.length; at++)',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/belief/lights.ts',
    line: 'for (let from = 0; from < table.length; from += kinds) {',
    after: '<=',
    why: 'A row past the end has no sum that is more than nought.',
  },
  {
    file: 'src/sweep/belief/prior.ts',
    line: 'for (let h = 0; h < weights.length; h++) weights[h]',
    after: '<=',
    why: 'What a typed array is given past its end is dropped.',
  },
  {
    file: 'src/sweep/end/confidence.ts',
    line: 'for (let place = 1; place < places; place++)',
    after: '<=',
    why: 'Past the end there is no belief, which is not more than any.',
  },
  {
    file: 'src/sweep/trouble/troublesOf.ts',
    line: 'trouble.bayesFactor >= (isHopeless(trouble) ? NAMED_EVERYWHERE : NAMED)',
    after: '>',
    why: 'No odds of these three are fifty or a hundred to the last digit.',
  },
];
