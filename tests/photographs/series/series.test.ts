import { describe, expect, test } from 'vitest';
import { bracketOrder } from '../../../src/photographs/bracket.ts';
import { bracketParts } from '../../../src/photographs/series/bracketParts.ts';
import { readBracket } from '../../../src/photographs/series/bracketSeries.ts';
import { checkParts } from '../../../src/photographs/series/checkParts.ts';
import { readCheck } from '../../../src/photographs/series/checkSeries.ts';
import { liveViewReference } from '../../../src/photographs/series/liveViewReference.ts';
import { around } from '../../../src/photographs/withInterval.ts';
import { steps } from '../../../src/units.ts';
import { READ_STEP, seriesPicture } from './seriesPictures.ts';

const picturesOf = (errors: readonly (number | null)[]) => errors.map((error, place) => seriesPicture(place, { error }));
const ids = (pictures: readonly { id: string }[]): string[] => pictures.map(({ id }) => id);

describe('a series that checks the value', () => {
  const read = (errors: readonly (number | null)[]) => {
    const pictures = picturesOf(errors);
    return readCheck(pictures, checkParts(ids(pictures), new Map()));
  };

  test('counts from the picture in live view', () => {
    expect(read([10, 9, 11, 10, 10])).toMatchObject({ shots: 4, reference: { value: 10 }, step: READ_STEP, check: { verdict: { is: 'confirmed' } } });
    expect(read([-60, 9, 11, 10, 10])).toMatchObject({ check: { verdict: { is: 'shifted', lies: 'behind' } } });
  });

  test('passes over a picture in which focus cannot be told, and keeps its turn', () => {
    expect(read([0, 20, null, 20, -20, 21, -21])).toMatchObject({ shots: 5, check: { nearLessFar: { value: expect.closeTo(40.8, 0) } } });
  });

  test('says nothing without a shot by autofocus', () => {
    expect(read([])).toBeNull();
    expect(read([3])).toBeNull();
  });
});

describe('a bracket of pictures', () => {
  const ORDER = bracketOrder([-8, -4, 0, 4, 8].map(steps), 2);
  const read = (errors: readonly number[], band: Parameters<typeof readBracket>[2]) => {
    const pictures = picturesOf(errors);
    return readBracket(pictures, bracketParts(ids(pictures), ORDER, new Map()), band);
  };
  const shots = ORDER.map((correction, at) => 6 * (correction - 2) + (at % 2 === 0 ? 1 : -1));

  test('gives the centre from the picture in live view, and the joint value with a band that agrees', () => {
    const series = read([6, ...shots], around(3, 1));
    expect(series).toMatchObject({ reference: { value: 6 }, measured: { ok: true, value: { joined: { is: 'agree' }, band: { value: 3 } } } });
    const told = series?.measured.ok ? series.measured.value : null;
    expect(told?.measure.centre.value).toBeCloseTo(3, 1);
    expect(told?.measure.lineAt(2).value).toBeCloseTo(0, 0);
  });

  test('says that it differs from the band, and is told without a band as well', () => {
    expect(read(shots, around(9, 1))).toMatchObject({ measured: { value: { joined: { is: 'differ' } } } });
    expect(read(shots, null)).toMatchObject({ reference: null, measured: { ok: true, value: { joined: null } } });
  });

  test('says why there is no centre, and nothing without a shot', () => {
    expect(read(shots.slice(0, 3), null)).toMatchObject({ measured: { ok: false, fault: { is: 'too few shots' } } });
    expect(read([], null)).toBeNull();
  });
});

describe('several pictures in live view', () => {
  test('are as unsure as they scatter where that is more than was measured', () => {
    expect(liveViewReference([])).toBeNull();
    expect(liveViewReference([around(4, 1)])).toEqual(around(4, 1));
    // Worked by hand: mean 10, standard deviation 10, over the root of 2, times 1.96.
    const { value, high } = liveViewReference([around(10 - 10 / Math.SQRT2, 0.1), around(10 + 10 / Math.SQRT2, 0.1)])!;
    expect(value).toBeCloseTo(10, 9);
    expect(high - value).toBeCloseTo((1.96 * 10) / Math.SQRT2, 2);
  });
});
