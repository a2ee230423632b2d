// English: what tells that the focus may have moved; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { write } from './write.ts';

const DOUBTED: Readonly<Record<Rival | 'none', string>> = {
  none: 'The focus has probably moved.',
  drifting: 'The focus has moved, or the band drifts while camera and lens warm: these holds cannot tell which.',
  play: 'The focus has moved, or it matters from which side a value was set: these holds cannot tell which.',
};

/** `rival`: the other of two stories that the holds cannot tell apart. */
export const drifted = ({ afterHold }: Pick<Drift, 'afterHold'>, rival?: Rival): string =>
  `The last answers do not fit the first ${write.number(afterHold)}. ${DOUBTED[rival ?? 'none']}`;
