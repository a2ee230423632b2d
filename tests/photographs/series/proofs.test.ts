// Contract of what is kept of pictures: it fits its schema, comes back from a file as it was, and bears no pixels.
import { describe, expect, test } from 'vitest';
import * as v from 'valibot';
import { bracketOrder } from '../../../src/photographs/bracket.ts';
import { Proof } from '../../../src/photographs/proof.ts';
import { bracketParts } from '../../../src/photographs/series/bracketParts.ts';
import { readBracket } from '../../../src/photographs/series/bracketSeries.ts';
import { checkParts } from '../../../src/photographs/series/checkParts.ts';
import { readCheck } from '../../../src/photographs/series/checkSeries.ts';
import { firstTaken, proofOfBracket, proofOfCheck, proofOfOne } from '../../../src/photographs/series/proofsOf.ts';
import { around } from '../../../src/photographs/withInterval.ts';
import { moment, steps } from '../../../src/units.ts';
import { focusAt, seriesPicture } from './seriesPictures.ts';

const picturesOf = (errors: readonly number[]) => errors.map((error, place) => seriesPicture(place, { error }));
const backFrom = (proof: Proof | null) => v.parse(Proof, JSON.parse(JSON.stringify(proof)));

describe('what is kept of pictures', () => {
  const checked = (errors: readonly number[]) => {
    const pictures = picturesOf(errors);
    const series = readCheck(
      pictures,
      checkParts(
        pictures.map(({ id }) => id),
        new Map(),
      ),
    );
    if (series === null) throw new Error('These shots count.');
    return proofOfCheck(series, steps(3), firstTaken(pictures));
  };

  test('of one picture comes back as it was', () => {
    const proof = proofOfOne(focusAt(4), moment(5));
    expect(backFrom(proof)).toEqual(proof);
    const { depth, ...focus } = focusAt(4);
    const endless = proofOfOne({ ...focus, depth: { ...depth, behind: 'infinite', total: 'infinite' } }, null);
    expect(backFrom(endless)).toMatchObject({ taken: null, depth: { behind: 'infinite' } });
  });

  test('of a check comes back as it was, and is nothing where too few shots give an interval', () => {
    const proof = checked([0, 9, 11, 10, 10]);
    expect(backFrom(proof)).toEqual(proof);
    expect(proof).toMatchObject({ correction: 3, shots: 4, reference: true, taken: 0, verdict: { is: 'confirmed' } });
    expect(checked([0, 9])).toBeNull();
    expect(checked([0, 9, 8])).toBeNull();
  });

  test.each([
    ['agrees', around(2, 1), 'agree'],
    ['differs', around(9, 1), 'differ'],
    ['has no band beside it', null, null],
  ])('of a bracket that %s comes back as it was', (_, band, is) => {
    const order = bracketOrder([-8, -4, 0, 4, 8].map(steps), 2);
    const pictures = picturesOf(order.map((correction, at) => 6 * (correction - 2) + (at % 2)));
    const parts = bracketParts(
      pictures.map(({ id }) => id),
      order,
      new Map(),
    );
    const series = readBracket(pictures, parts, band);
    if (!series?.measured.ok) throw new Error('These shots have a centre.');
    const proof = proofOfBracket(series, series.measured.value, null);
    expect(backFrom(proof)).toEqual(proof);
    expect(proof).toMatchObject(is === null ? { joined: null } : { joined: { is, band } });
  });

  test('is dated by the first picture that a camera dated', () => {
    expect(firstTaken([seriesPicture(3), seriesPicture(1), seriesPicture(0, { camera: null })])).toBe(60_000);
    expect(firstTaken([seriesPicture(0, { camera: null })])).toBeNull();
  });
});
