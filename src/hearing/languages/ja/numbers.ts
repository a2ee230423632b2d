// Japanese: numbers as they are heard, of a correction, a lens or a serial number.
import type { SaidNumbers } from '../heardLanguage.ts';
import { sayWhole } from './say.ts';

export const sayKana = sayWhole;

/** "し", "しち" and "く" in the place of the ones, and a zero by another name. */
const OTHER_DIGITS = [
  ['よん', 'し'],
  ['なな', 'しち'],
  ['きゅう', 'く'],
] as const;

export function otherWays(whole: number): readonly string[] {
  if (whole === 0) return ['れい', 'まる'];
  const said = sayWhole(whole);
  return OTHER_DIGITS.filter(([usual]) => said.endsWith(usual)).map(([usual, other]) => said.slice(0, -usual.length) + other);
}

export const NUMBERS: SaidNumbers = {
  say: sayWhole,
  also: otherWays,
  zeros: ['れい', 'まる'],
  point: 'てん',
  letter: /^[a-z]$/,
  ordinals: [],
};
