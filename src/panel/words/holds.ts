// A hold in words: its value, what was seen, and how it counts.
import { writeSteps } from '../../sweep/scale.ts';
import type { Arrows, Light } from '../../sweep/verdict.ts';
import type { Steps } from '../../units.ts';
import { LIGHT } from '../../voice/vocabulary/en.ts';

const BESIDE: Record<Arrows, string> = {
  none: '',
  left: ', left arrow',
  right: ', right arrow',
  balanced: ', both arrows evenly',
  lopsided: ', arrows uneven',
};

interface HoldLine {
  readonly value: Steps;
  readonly light: Light;
  readonly arrows: Arrows;
  readonly counts: 'in' | 'out';
}

/** "+7 came late, right arrow: out". */
export const holdInWords = ({ value, light, arrows, counts }: HoldLine): string =>
  `${writeSteps(value)} ${LIGHT[light].did}${BESIDE[arrows]}: ${counts}`;
