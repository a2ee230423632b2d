// French: what tells that the focus may have moved; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { write } from './write.ts';

const DOUBTED: Readonly<Record<Rival | 'none', string>> = {
  none: 'La mise au point a probablement bougé.',
  drifting: 'La mise au point a bougé, ou bien la bande dérive pendant que boîtier et objectif chauffent : ces essais ne permettent pas de trancher.',
  play: 'La mise au point a bougé, ou bien le sens dans lequel une valeur est réglée compte : ces essais ne permettent pas de trancher.',
};

/** `rival`: the other of two stories that the holds cannot tell apart. */
export const drifted = ({ afterHold }: Pick<Drift, 'afterHold'>, rival?: Rival): string =>
  `Les dernières réponses ne concordent pas avec ${write.count(afterHold, { one: 'la première', other: 'les # premières' })}. ${DOUBTED[rival ?? 'none']}`;
