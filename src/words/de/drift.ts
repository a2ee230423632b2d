// German: what tells that the focus may have moved; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { write } from './write.ts';

const DOUBTED: Readonly<Record<Rival | 'none', string>> = {
  none: 'Der Fokus hat sich wahrscheinlich verschoben.',
  drifting: 'Der Fokus hat sich verschoben, oder das Band driftet, während Kamera und Objektiv warm werden: Die Proben lassen beides zu.',
  play: 'Der Fokus hat sich verschoben, oder es kommt darauf an, von welcher Seite ein Wert eingestellt wird: Die Proben lassen beides zu.',
};

/** `rival`: the other of two stories that the holds cannot tell apart. */
export const drifted = ({ afterHold }: Pick<Drift, 'afterHold'>, rival?: Rival): string =>
  `${write.count(afterHold, {
    one: 'Die letzten Antworten passen nicht zur ersten.',
    other: 'Die letzten Antworten passen nicht zu den ersten #.',
  })} ${DOUBTED[rival ?? 'none']}`;
