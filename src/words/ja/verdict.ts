// Japanese: what was seen in a hold. Read back it is said in the words that a person is taught to say for it; told of, the light
// is 安定, 遅れ, ちらつき or 点灯なし.
import type { Arrows, Light, Verdict } from '../../sweep/verdict.ts';
import { taught } from '../taught.ts';

function lightSaid(light: Light): string {
  switch (light) {
    case 'steady':
      return taught('solid');
    case 'late':
      return taught('delayed');
    case 'flicker':
      return taught('flicker');
    case 'dark':
      return taught('nothing');
    case 'untold':
      return '不安定';
  }
}

export const arrowsSaid = (arrows: Arrows): string | null => (arrows === 'none' ? null : taught(arrows));

/** 「ちらつき、左」. */
export const readBack = ({ light, arrows }: Verdict): string => [lightSaid(light), arrowsSaid(arrows)].filter(Boolean).join('、');

export const LIGHT: Readonly<Record<Light, string>> = { steady: '安定', late: '遅れ', flicker: 'ちらつき', dark: '点灯なし', untold: '不安定' };

const ARROWS_SEEN: Readonly<Record<Arrows, string | null>> = {
  none: null,
  left: '左矢印',
  right: '右矢印',
  balanced: '矢印両方均等',
  lopsided: '矢印不均等',
};

/** 「ちらつき、左矢印」. */
export const seen = ({ light, arrows }: Verdict): string => [LIGHT[light], ARROWS_SEEN[arrows]].filter(Boolean).join('、');
