// Contract of what a series of pictures says: never a margin or a value that is not borne out, and a side in plain words.
import { describe, expect, test } from 'vitest';
import { bracketOrder } from '../../src/photographs/bracket.ts';
import { bracketParts } from '../../src/photographs/series/bracketParts.ts';
import { readBracket } from '../../src/photographs/series/bracketSeries.ts';
import { checkParts } from '../../src/photographs/series/checkParts.ts';
import { readCheck } from '../../src/photographs/series/checkSeries.ts';
import { around, type WithInterval } from '../../src/photographs/withInterval.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { steps, type Steps } from '../../src/units.ts';
import { words } from '../../src/words/catalogue.ts';
import type { FocusReading } from '../../src/photographs/focusReading.ts';
import { focusAt, seriesPicture } from '../photographs/series/seriesPictures.ts';

function checkSaid(errors: readonly number[], value: Steps | null, step: WithInterval | null = null): readonly string[] {
  const pictures = errors.map((error, place) => seriesPicture(place, { error }));
  const series = readCheck(
    pictures,
    checkParts(
      pictures.map(({ id }) => id),
      new Map(),
    ),
  );
  return series === null ? [] : words('series').check.told(series, value, USUAL_SCALE, step);
}

describe('a check of the value', () => {
  test('that is confirmed names the value, where it was told', () => {
    expect(checkSaid([0, 1, -1, 2, 0], steps(3))[0]).toBe('Confirmed: +3 is right.');
    expect(checkSaid([0, 1, -1, 2, 0], null)[0]).toBe('Confirmed: the value is right.');
  });

  test('that finds a shift says how far, on which side, and what about undoes it', () => {
    const [headline, undone] = checkSaid([0, 51, 49, 50, 50], steps(3));
    expect(headline).toMatch(/^Shifted: with \+3, focus falls 50\u00a0mm ± [\d.]+\u00a0mm behind the target\.$/);
    expect(undone).toBe('About −10 steps would undo it, by an estimate of what a step is worth: try −7, and check again.');
    expect(checkSaid([0, -51, -49, -50, -50], steps(15))[1]).toBe(
      'About +10 steps would undo it, by an estimate of what a step is worth, which is off the scale.',
    );
    expect(checkSaid([0, 51, 49, 50, 50], steps(3), around(10, 1))[1]).toBe(
      'About −5 steps would undo it, by what a bracket measured a step to be worth: try −2, and check again.',
    );
  });

  test('with too few shots gives no margin, and no value', () => {
    expect(checkSaid([0, 50, 49], steps(3))).toEqual(['Not enough to tell: take 2 more shots.']);
  });

  test('says so where it matters which way focus comes from, and only then', () => {
    const [, , ways] = checkSaid([0, 8, -8, 8, -8, 9, -9], steps(3));
    expect(ways).toMatch(
      /^It matters where focus comes from: after defocusing to near, it falls 17\u00a0mm ± [\d.]+\u00a0mm farther away than after defocusing to far\.$/,
    );
    expect(checkSaid([0, 1, -1, -2, 2, 1, 0], steps(3)).join(' ')).not.toContain('It matters');
  });
});

describe('a bracket', () => {
  const ORDER = bracketOrder([-8, -4, 0, 4, 8].map(steps), 2);

  function bracketSaid(centre: number, band: WithInterval | null): readonly string[] {
    const pictures = ORDER.map((correction, at) => seriesPicture(at, { error: 6 * (correction - centre) + (at % 2 === 0 ? 1 : -1) }));
    const series = readBracket(
      pictures,
      bracketParts(
        pictures.map(({ id }) => id),
        ORDER,
        new Map(),
      ),
      band,
    );
    return series?.measured.ok ? words('series').bracket.told(series.measured.value, USUAL_SCALE) : [];
  }

  test('says what to enter from both centres where they agree, and from its own where there is no band', () => {
    expect(bracketSaid(2, around(3, 2))).toEqual([
      expect.stringMatching(/^The pictures put the centre at \+2(\.1)? \(95% between \+1\.\d and \+2\.\d\)\.$/),
      expect.stringMatching(/^It agrees with the band’s centre, \+3; they differ by −[\d.]+ ± [\d.]+ steps\. Together they give /),
      'Value to enter: +2.',
      expect.stringMatching(/^One step moves focus by 6\u00a0mm ± 0\.\d\u00a0mm at the target\.$/),
    ]);
    expect(bracketSaid(-3, null)).toContain('Value to enter: −3.');
  });

  test('names no value where the centres differ, and none off the scale', () => {
    const differing = bracketSaid(2, around(9, 1));
    expect(differing[1]).toMatch(/^This differs from the band’s centre, \+9, by −[67][\d.]* ± [\d.]+ steps\. Check the set-up/);
    expect(differing.join(' ')).not.toContain('Value to enter');
    expect(bracketSaid(24, null)).toContain('It lies off the scale.');
  });
});

test('the figures of one picture say by which worth of a step a focus error is undone, and say nothing of it on the target', () => {
  const read = focusAt(50);
  const off: FocusReading = { ...read, ramp: { ...read.ramp, lies: 'behind' } };
  const { focus } = words('photographs').figures;
  expect(focus(off, null).at(-1)).toBe('About −10 steps of correction would undo it, by an estimate of what a step is worth.');
  expect(focus(off, around(10, 1)).at(-1)).toBe('About −5 steps of correction would undo it, by what a bracket measured a step to be worth.');
  expect(focus(read, around(10, 1)).join(' ')).not.toContain('undo');
});
