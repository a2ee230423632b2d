// How the practice camera focuses for each picture, as the order of the shots has it.
import { bracketPlan } from '../../photographs/series/bracketPlan.ts';
import type { PracticeTurn } from '../../practice/pictures/picturedCamera.ts';
import type { Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import type { PictureUse } from './pictureUse.ts';

/** With autofocus in a check: as many as its order asks for. */
const CHECK_SHOTS = 6;
const LIVE_VIEW: PracticeTurn = { by: 'live view' };

/** `value`: the correction that the body is set to, or that the bracket lies around. */
export function practiceTurns(use: PictureUse, value: Steps, scale: Scale): readonly PracticeTurn[] {
  const shot = (at: number, place: number): PracticeTurn => ({ by: 'autofocus', at, thrown: place % 2 === 0 ? 'near' : 'far' });
  switch (use) {
    case 'one':
      return [shot(value, 0)];
    case 'check':
      return [LIVE_VIEW, ...Array.from({ length: CHECK_SHOTS }, (_, place) => shot(value, place))];
    case 'bracket':
      return [LIVE_VIEW, ...bracketPlan(scale, value).map(shot)];
  }
}
