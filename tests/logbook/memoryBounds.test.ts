// Contract of what a sweep remembers at its bounds: how alike two lenses must be, how many bands tell a width, and how sure that is.
import { describe, expect, test } from 'vitest';
import { memoryFor } from '../../src/logbook/memory.ts';
import { newestCheck } from '../../src/logbook/newestCheck.ts';
import { steps } from '../../src/units.ts';
import { DAY, libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

const memory = (parts: Parts) => {
  const { kit, records, byHand } = libraryWith(parts);
  return memoryFor(kit.situations[0]!, [...records, ...byHand], kit);
};
const subjectOf = (situation: string) => ({ situation, body: 'Velde M1', lens: 'Orrin', focalLength: 85, distance: 4250 });

/** Lens `l` of this aperture, and bands of these widths of as many other lenses of the other aperture. */
function widths(own: number, theirs: number, ...wide: readonly number[]) {
  const aperture = (widest: number) => ({ from: widest, to: widest });
  const lenses = [{ id: 'l', widest: aperture(own) }, ...wide.map((_, at) => ({ id: `l${at}`, widest: aperture(theirs) }))];
  const situations = [{ id: 's' }, ...wide.map((_, at) => ({ id: `s${at}`, lens: `l${at}` }))];
  const records = wide.map((width, at) => sweepRecord(`r${at}`, T0, 0, width - 1, { subject: subjectOf(`s${at}`) }));
  return memory({ lenses, situations, records }).halfWidth;
}

describe('the width of other lenses', () => {
  test('counts within 0.4 stops, wider or slower', () => {
    // Twice the base-two logarithm of the ratio: 0.30 stops from 1.8 to 2, 0.58 from 1.8 to 2.2.
    expect([widths(1.8, 2, 6, 6, 6), widths(2, 1.8, 6, 6, 6)].map((width) => width?.median)).toEqual([expect.closeTo(3, 9), expect.closeTo(3, 9)]);
    expect([widths(1.8, 2.2, 6, 6, 6), widths(2.2, 1.8, 6, 6, 6)]).toEqual([null, null]);
  });

  test('counts from three on, as their middle', () => {
    expect([widths(2, 2, 4, 8), widths(2, 2, 8, 2, 4)?.median, widths(2, 2, 2, 9, 8, 4)?.median]).toEqual([
      null,
      expect.closeTo(2, 9),
      expect.closeTo(Math.sqrt(8), 9),
    ]);
  });

  test('is believed within a quarter and six tenths of its logarithm', () => {
    expect([widths(2, 2, 6, 6, 6)?.logSd, widths(2, 2, 1, 6, 40)?.logSd]).toEqual([0.25, 0.6]);
    // The widths 3, 6 and 12: √(2 ln² 2 / 2).
    expect(widths(2, 2, 3, 6, 12)?.logSd).toBeCloseTo(0.6, 9);
    expect(widths(2, 2, 4, 6, 9)?.logSd).toBeCloseTo(Math.log(1.5), 9);
  });

  test('of another converter does not count', () => {
    const situations = [{ id: 's' }, ...[0, 1, 2].map((at) => ({ id: `s${at}`, converter: 'x' }))];
    const records = [0, 1, 2].map((at) => sweepRecord(`r${at}`, T0, 0, 5, { subject: subjectOf(`s${at}`) }));
    const parts = { lenses: [{ id: 'l', widest: { from: 2, to: 2 } }], converters: [{ id: 'x' }], situations, records };
    expect(memory(parts)).toMatchObject({ centres: [], halfWidth: null });
  });
});

test('the newest that tells of the centre counts; of one moment that of the later id', () => {
  const nothing = { outcome: { found: 'nothing', tally: { holds: 5, seconds: 60 } } };
  const centre = (...records: readonly unknown[]) => memory({ records }).centres[0]?.centre;
  expect(centre(sweepRecord('a', T0, 0, 4), sweepRecord('b', T0 + DAY, 0, 0, nothing))).toBe(2);
  expect(centre(sweepRecord('a', T0, 0, 4), sweepRecord('b', T0, 4, 8))).toBe(6);
  expect(centre(sweepRecord('b', T0, 4, 8), sweepRecord('a', T0, 0, 4))).toBe(6);
});

test('the newest check that could tell is told, of any value or of one', () => {
  const check = (id: string, correction: number, is: string, taken: number | null = null) => {
    const [value, depth] = [
      { value: 3, low: 1, high: 5 },
      { front: 20, behind: 22 },
    ];
    const verdict = { is, ...(is === 'shifted' && { lies: 'behind' }), ...(is === 'not enough' && { more: 3 }) };
    return {
      id,
      at: T0,
      proof: { is: 'check', taken, correction, shots: 8, reference: true, bias: value, repeatability: 1, nearLessFar: null, depth, verdict },
    };
  };
  const { proofs } = libraryWith({ proofs: [check('a', 4, 'confirmed', T0 - DAY), check('b', 5, 'shifted'), check('c', 6, 'not enough'), { id: 'd' }] });
  const told = [null, 4, 5, 6].map((value) => newestCheck(proofs, value === null ? null : steps(value)));
  expect(told.map((one) => one && [one.correction, one.found, one.at])).toEqual([[5, 'shifted', T0], [4, 'confirmed', T0 - DAY], [5, 'shifted', T0], null]);
});
