// What tells that the focus may have moved, in words; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';

const RIVAL: Record<Rival, string> = {
  drifting: ', or all of them of one that drifts while camera and lens warm',
  play: ', or all of them of one that depends on the direction in which the value was last changed',
};

/** `rival`: the other of two stories that the holds cannot tell apart. */
export const driftInWords = ({ afterHold }: Drift, rival?: Rival): string => `The holds after the first ${afterHold} tell of another band${rival ? RIVAL[rival] : ''}.`;
