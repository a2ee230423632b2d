// Contract of the practice lamp: what it shows can be judged by eye, and judged rightly.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseOf, lampAt, lampOf, practiceVerdict, untilChange, type LampCourse } from '../../src/practice/lamp.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import type { Plan } from '../../src/sweep/plan.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { transition } from '../../src/sweep/transition.ts';
import type { Light } from '../../src/sweep/verdict.ts';
import { Arrows } from '../../src/sweep/storedVerdict.ts';
import { millimetres, moment, seconds, steps } from '../../src/units.ts';

const holdTimes = fc.integer({ min: 3, max: 15 }).map(seconds);
const seeds = fc.nat();
const arrows = fc.constantFrom(...Arrows.options);

const course = (light: Light, holdTime: number, seed: number, arrow: Arrows = 'none'): LampCourse =>
  courseOf({ light, arrows: arrow }, seconds(holdTime), seededRandom(seed));

describe('the course of the light', () => {
  test('a steady light is on from the first moment and never goes out', () => {
    fc.assert(
      fc.property(holdTimes, seeds, (time, seed) => {
        expect(course('steady', time, seed).map(({ at, lit }) => ({ at, lit }))).toEqual([{ at: 0, lit: true }]);
      }),
    );
  });

  test('a late light starts dark for at least half a second, comes on within the hold and stays on', () => {
    fc.assert(
      fc.property(holdTimes, seeds, (time, seed) => {
        const [first, second, ...rest] = course('late', time, seed);
        expect(first).toMatchObject({ at: 0, lit: false });
        expect(second?.lit).toBe(true);
        expect(second?.at).toBeGreaterThanOrEqual(0.5);
        expect(second?.at).toBeLessThan(time / 2);
        expect(rest).toEqual([]);
      }),
    );
  });

  test('a flickering light is on at once, goes out at least once for long enough to see, and is on at the end', () => {
    fc.assert(
      fc.property(holdTimes, seeds, (time, seed) => {
        const all = course('flicker', time, seed);
        expect(all[0]).toMatchObject({ at: 0, lit: true });
        expect(all.length).toBeGreaterThanOrEqual(3);
        expect(all.at(-1)?.lit).toBe(true);
        all.slice(1).forEach((now, index) => {
          const lasted = now.at - (all[index]?.at ?? 0);
          expect(now.lit).not.toBe(all[index]?.lit);
          expect(lasted).toBeGreaterThanOrEqual(0.14);
        });
        expect(all.at(-1)?.at).toBeLessThan(time);
      }),
    );
  });

  test('a dark light never comes on', () => {
    fc.assert(
      fc.property(holdTimes, seeds, arrows, (time, seed, arrow) => {
        expect(course('dark', time, seed, arrow).every(({ lit }) => !lit)).toBe(true);
      }),
    );
  });

  test('a failing light shows its arrow only while it is out', () => {
    for (const { lit, arrows: shown } of course('flicker', 5, 7, 'right')) expect(shown).toBe(lit ? 'none' : 'right');
    expect(course('steady', 5, 7, 'balanced')[0].arrows).toBe('both');
  });
});

describe('reading the course', () => {
  const late = course('late', 5, 3);
  const on = late[1]?.at ?? seconds(0);

  test('the lamp shows the last entry that has come', () => {
    expect(lampAt(late, seconds(0)).lit).toBe(false);
    expect(lampAt(late, seconds(on - 0.01)).lit).toBe(false);
    expect(lampAt(late, on).lit).toBe(true);
    expect(lampAt(late, seconds(99)).lit).toBe(true);
  });

  test('it tells how long until the next change, and null after the last', () => {
    expect(untilChange(late, seconds(0))).toBe(on);
    expect(untilChange(late, on)).toBeNull();
  });
});

describe('the lamp of a practice sweep', () => {
  const plan: Plan = {
    subject: { situation: 'p', body: 'Practice camera', lens: 'Practice lens', focalLength: millimetres(50), distance: millimetres(2500) },
    scale: USUAL_SCALE,
    arrows: 'absent',
    manner: USUAL_MANNER,
    memory: NO_MEMORY,
    start: steps(0),
    practice: { seed: 4 },
  };
  const opened = openSweep({ did: 'opened', at: moment(0), id: 's', plan }).state;
  const held = transition(opened, { did: 'began', at: moment(1000), value: steps(0), by: 'key' }).state;

  test('it plays from the half-press until the verdict', () => {
    const ran = transition(held, { did: 'ran', at: moment(6000) }).state;
    const judged = transition(ran, { did: 'judged', at: moment(6500), verdict: { light: 'steady', arrows: 'none' }, by: 'key', heard: null }).state;
    expect(lampOf(opened)).toBeNull();
    expect(lampOf(held)).not.toBeNull();
    expect(lampOf(ran)).toEqual(lampOf(held));
    expect(lampOf(judged)).toBeNull();
  });

  test('the same seed, value and hold show the same, and the verdict is known to a test', () => {
    expect(lampOf(held)).toEqual(lampOf(held));
    const verdict = practiceVerdict(plan, steps(0), 1);
    expect(verdict && lampOf(held)?.some(({ lit }) => lit)).toBe(verdict?.light !== 'dark');
  });

  test('real kit has no lamp', () => {
    const real = openSweep({ did: 'opened', at: moment(0), id: 's', plan: { ...plan, practice: null } }).state;
    const under = transition(real, { did: 'began', at: moment(1000), value: steps(0), by: 'key' }).state;
    expect(lampOf(under)).toBeNull();
    expect(practiceVerdict({ ...plan, practice: null }, steps(0), 1)).toBeNull();
  });
});
