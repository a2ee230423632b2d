// What an own share of lapses is worth: bands drawn from the plain prior, every value of a short scale held twice, and a
// person who spoils a known share of the holds, through the belief that the panel uses. The seeds are fixed.
import { describe, expect, test } from 'vitest';
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import { normal, seededRandom } from '../../../src/practice/random.ts';
import { chancesOfIn, openBelief, stimulusOf, weigh } from '../../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { surestValue } from '../../../src/sweep/end/confidence.ts';
import type { Scale } from '../../../src/sweep/scale.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';

const SCALE: Scale = { min: steps(-6), max: steps(6), step: 1 };
const VALUES = Array.from({ length: 13 }, (_, index) => steps(index - 6));
const RUNS = 150;
/** A steady light counts as promised where the belief gives it at least this chance. */
const PROMISED = 0.9;

function cameraOf(seed: number, lapses: number): PracticeCamera {
  const random = seededRandom(2 * seed + 1);
  const centre = normal(random, 0, 2.4);
  const reach = Math.exp(normal(random, Math.log(1.8), 0.5));
  const softness = [0.3, 0.6, 1.1][seed % 3] ?? 0.6;
  return { low: centre - reach, high: centre + reach, softLow: softness, softHigh: softness, lateUpTo: 1, darkFrom: 6, lapses, arrows: 'absent' };
}

/** The same bands and the same person, believed to spoil `believed` of the holds. */
function swept(lapses: number, believed: number | undefined) {
  const opening = openBelief(SCALE, false, NO_MEMORY, believed);
  const promises: { readonly chance: number; readonly held: number }[] = [];
  const ends: { readonly stated: number; readonly isSo: number }[] = [];
  let surprise = 0;
  for (let seed = 0; seed < RUNS; seed++) {
    const camera = cameraOf(seed, lapses);
    const random = seededRandom(2 * seed + 2);
    let belief = opening;
    for (const [index, value] of [...VALUES, ...VALUES].entries()) {
      const reading = read(halfPress(camera, value, random), 'absent');
      // The second time round the belief knows the band, and says what it expects of it.
      const chance = index < VALUES.length ? 0 : (chancesOfIn(belief)[stimulusOf(belief.model, value)] ?? 0);
      if (chance >= PROMISED) promises.push({ chance, held: Number(reading.counts === 'in') });
      const weighed = weigh(belief, value, reading);
      surprise -= Math.log(weighed.predictive);
      belief = weighed.belief;
    }
    const { value, within } = surestValue(belief);
    ends.push({ stated: within, isSo: Number(Math.abs((camera.low + camera.high) / 2 - value) <= 1) });
  }
  const mean = <One>(all: readonly One[], of: (one: One) => number): number => all.reduce((sum, one) => sum + of(one), 0) / all.length;
  return {
    /** How much more often a steady light was promised than it came. */
    overpromised: mean(promises, ({ chance, held }) => chance - held),
    promises: promises.length,
    /** Mean surprise of a hold, in nats: the logarithmic score of all predictions (Good 1952, J. R. Stat. Soc. B 14:107). */
    surprise: surprise / (RUNS * VALUES.length * 2),
    /** How much surer of the centre it was than it was right. */
    oversure: mean(ends, ({ stated, isSo }) => stated - isSo),
  };
}

describe('a person who spoils eight holds in a hundred', () => {
  const usual = swept(0.08, undefined);
  const own = swept(0.08, 0.08);

  test('is promised too much by the usual belief, and not by one that knows it', () => {
    expect(own.promises).toBeGreaterThan(100);
    expect(usual.overpromised).toBeGreaterThan(0.03);
    expect(Math.abs(own.overpromised)).toBeLessThan(0.02);
  });

  test('surprises the belief that knows it less, hold for hold', () => {
    expect(own.surprise).toBeLessThan(usual.surprise);
  });

  // With every value held twice both are right about the centre: the lapses cost promises, not the result.
  test('gets a centre stated as sure as it is, either way', () => {
    expect(Math.abs(usual.oversure)).toBeLessThan(0.04);
    expect(Math.abs(own.oversure)).toBeLessThan(0.04);
  });
});

// Some seconds of arithmetic, more on a busy machine.
test('a careful person loses nothing by their own share of lapses', { timeout: 60_000 }, () => {
  const usual = swept(0.01, undefined);
  const own = swept(0.01, 0.01);
  expect(own.surprise).toBeLessThanOrEqual(usual.surprise);
  expect(Math.abs(own.overpromised)).toBeLessThanOrEqual(Math.abs(usual.overpromised));
  expect(Math.abs(own.oversure)).toBeLessThan(0.04);
});
