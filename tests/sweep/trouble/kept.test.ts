// The numbers of the troubles, as they were: a light that is the same everywhere, a hole in the band, arrows against the lights, and
// which of them are named, for series that a seed draws and for some that are spoilt on purpose.
import { expect, test } from 'vitest';
import type { Hold } from '../../../src/sweep/hold.ts';
import { arrowsAgainst } from '../../../src/sweep/trouble/arrows.ts';
import { sameEverywhere } from '../../../src/sweep/trouble/everywhere.ts';
import { holeIn } from '../../../src/sweep/trouble/hole.ts';
import { troublesOf } from '../../../src/sweep/trouble/troublesOf.ts';
import { read, type ArrowDisplay, type Verdict } from '../../../src/sweep/verdict.ts';
import { weigh } from '../../../src/sweep/belief/belief.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { COARSE, drawn, type Drawn, type Terms } from '../drawn.ts';
import { oneLine } from '../../kept/oneLine.ts';

/** The same holds, with other verdicts. */
function spoilt(seed: number, terms: Terms, verdictOf: (hold: Hold, at: number) => Verdict): Drawn {
  const { opening, holds } = drawn(seed, terms);
  const display: ArrowDisplay = terms.arrows ?? 'absent';
  let belief = opening;
  const beliefs: Drawn['beliefs'][number][] = [];
  const again = holds.map((hold, at): Hold => {
    const verdict = verdictOf(hold, at);
    const reading = read(verdict, display);
    const after = weigh(belief, hold.value, reading);
    belief = after.belief;
    beliefs.push(belief);
    return { ...hold, verdict, reading, predictive: after.predictive };
  });
  return { opening, belief, holds: again, beliefs };
}

const turned = ({ light, arrows }: Verdict): Verdict => ({ light, arrows: arrows === 'left' ? 'right' : arrows === 'right' ? 'left' : arrows });
const WIDE = [-5, 5, 0, -3, 3, 4, -4, 2, -2, 1];
const ARROWS: Terms = { arrows: 'right-is-up', wrong: 0, bandAt: () => [-1.5, 2.5], values: WIDE };
const HOLED: Terms = { wrong: 0, bandAt: () => [-4.5, 4.5], values: [-4, 4, 0, 1, 3, 0, -3, 1, -5, 5] };
const inHole = ({ value, verdict }: Hold, at: number): Verdict => ((value === 0 || value === 1) && at !== 5 ? { light: 'flicker', arrows: 'none' } : verdict);
const only = (light: Verdict['light'], every: number, other: Verdict['light']) => (_: Hold, at: number): Verdict => ({ light: at % every === every - 1 ? other : light, arrows: 'none' }); // prettier-ignore

const SERIES: Readonly<Record<string, Drawn>> = {
  healthy: drawn(71, { count: 12, wrong: 0.1 }),
  'healthy, with arrows': drawn(72, ARROWS),
  'with arrows the other way round': spoilt(73, ARROWS, ({ verdict }) => turned(verdict)),
  'with arrows that turn midway': spoilt(74, ARROWS, ({ verdict }, at) => (at > 3 ? turned(verdict) : verdict)),
  'with arrows by chance': spoilt(75, { ...ARROWS, scale: COARSE, values: [-6, 0, 6, 8, 2, 12, 10, -4, -2] }, ({ verdict }, at) => (at % 2 ? turned(verdict) : verdict)),
  'with a hole': spoilt(76, HOLED, inHole),
  'with a hole, and arrows': spoilt(76, { ...HOLED, arrows: 'right-is-down' }, (hold, at) => ({ light: inHole(hold, at).light, arrows: at % 3 ? 'none' : 'left' })),
  'with a hole, in strides of two': spoilt(77, { scale: COARSE, wrong: 0, values: [-2, 10, 4, 4, 2, 8, 6, 4, 12] }, ({ value }) => ({ light: value === 4 || value === 2 ? 'late' : 'steady', arrows: 'none' })),
  'that flickers everywhere': spoilt(78, { values: WIDE }, only('flicker', 4, 'late')),
  'that mostly flickers': spoilt(78, { values: WIDE.slice(0, 8) }, only('flicker', 5, 'dark')),
  'that never lights': spoilt(79, { values: WIDE, arrows: 'right-is-up' }, ({ value }) => ({ light: 'dark', arrows: value % 2 ? 'left' : 'right' })),
  'that lights everywhere': spoilt(80, { values: [...WIDE, 5] }, only('steady', 11, 'untold')),
  'that fails untold': spoilt(81, { values: WIDE }, only('untold', 3, 'flicker')),
}; // prettier-ignore

test.each(Object.keys(SERIES))('a series %s', (name) => {
  const { opening, belief, beliefs, holds } = SERIES[name] ?? drawn(0);
  const each = [holds.length, holds.length - 1, 8, 7, 5].map((count) => {
    const some = holds.slice(0, count);
    const now = beliefs[count - 1] ?? belief;
    return [sameEverywhere(now, some), holeIn(now, some), arrowsAgainst(now, some)].map(oneLine);
  });
  const named = [troublesOf(belief, holds, null, []), troublesOf(belief, holds, { bayesFactor: 60, afterHold: 3 }, []), troublesOf(opening, [], null, [])];
  expect([each, named.map(oneLine)]).toMatchSnapshot();
});

test('holes of any width between any values', () => {
  const random = seededRandom(5);
  const rows = [82, 83, 84, 85, 86].map((seed) => {
    const values = Array.from({ length: 11 }, (_, at) => [-4, 4][at] ?? Math.floor(9 * random()) - 4);
    const { belief, holds } = spoilt(seed, { values }, ({ value }) => ({
      light: Math.abs(value) > 2 || random() < 0.15 ? 'steady' : 'flicker',
      arrows: 'none',
    }));
    return oneLine(holeIn(belief, holds));
  });
  expect(rows).toMatchSnapshot();
});
