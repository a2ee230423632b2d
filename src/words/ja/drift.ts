// Japanese: what tells that the focus may have moved; the odds stand with what to check.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { write } from './write.ts';

const DOUBTED: Readonly<Record<Rival | 'none', string>> = {
  none: 'ピントが動いたと考えられます。',
  drifting: 'ピントが動いたか、カメラとレンズが温まるにつれて安定域が動いています。これまでの半押しでは、どちらか区別できません。',
  play: 'ピントが動いたか、値を合わせる向きで結果が変わります。これまでの半押しでは、どちらか区別できません。',
};

/** `rival`: the other of two stories that the holds cannot tell apart. */
export const drifted = ({ afterHold }: Pick<Drift, 'afterHold'>, rival?: Rival): string =>
  `最近の判定が、最初の${write.number(afterHold)}回の判定と合いません。${DOUBTED[rival ?? 'none']}`;
