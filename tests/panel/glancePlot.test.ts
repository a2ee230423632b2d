// Contract of a strip of the glance: everything lies on its scale, the drawn band holds what was measured, and all strips of a body line up.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { shelfOf, type Shelved } from '../../src/logbook/shelf.ts';
import { glanceLabels, glancePlotOf } from '../../src/panel/glance/glancePlot.ts';
import { USUAL_SCALE, type Scale } from '../../src/sweep/scale.ts';
import { moment, steps } from '../../src/units.ts';
import { libraryWith, sweepRecord, T0, type Parts } from '../logbook/libraryWith.ts';

const SMALL: Scale = { min: steps(-10), max: steps(10), step: 1 };

const shelvedIn = (parts: Parts): Shelved => shelfOf(libraryWith(parts), { at: moment(T0), temperature: null }, USUAL_LIMITS)[0]!;
const swept = (low: number, high: number, entered: number | null = null): Shelved =>
  shelvedIn({ records: [sweepRecord('r', T0, low, high)], entries: entered === null ? [] : [{ id: 'e', value: entered }] });

describe('a strip of the glance', () => {
  test('no part of it reaches past the room it has, whatever was measured on whatever scale', () => {
    const values = fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 0, max: 12 }), fc.integer({ min: -20, max: 20 }));
    fc.assert(
      fc.property(values, fc.constantFrom(USUAL_SCALE, SMALL), fc.integer({ min: 140, max: 340 }), ([low, wide, entered], scale, width) => {
        const { left, right, band, interval, centre, entered: x } = glancePlotOf(swept(low, Math.min(20, low + wide), entered), scale, width);
        const parts = [
          left,
          right,
          ...(band ? [band.x, band.x + band.width] : []),
          ...(interval ? [interval.from, interval.to] : []),
          centre ?? left,
          x ?? left,
        ];
        for (const part of parts) {
          expect(part).toBeGreaterThanOrEqual(0);
          expect(part).toBeLessThanOrEqual(width);
        }
      }),
    );
  });

  test('the band runs half a step past its outermost values, and holds its centre and interval', () => {
    const { band, centre, interval, left, right } = glancePlotOf(swept(-2, 4), USUAL_SCALE, 340);
    const step = (right - left) / 40;
    expect(band!.width).toBeCloseTo(7 * step, 6);
    expect(centre).toBeCloseTo(band!.x + band!.width / 2, 6);
    expect(interval!.to - interval!.from).toBeCloseTo(step, 6);
  });

  test('what is entered stands on the centre only where it is the centre', () => {
    const at = glancePlotOf(swept(-2, 4, 1), USUAL_SCALE, 340);
    expect(at.entered).toBe(at.centre);
    const aside = glancePlotOf(swept(-2, 4, 3), USUAL_SCALE, 340);
    expect(aside.entered).toBeGreaterThan(aside.centre!);
  });

  test('a centre off the scale of the body is told by its side, and no dot is drawn', () => {
    expect(glancePlotOf(swept(11, 15), SMALL, 300)).toMatchObject({ centre: null, beyond: 'right', band: null });
    expect(glancePlotOf(swept(-17, -12), SMALL, 300)).toMatchObject({ centre: null, beyond: 'left' });
  });

  test('a situation that was never measured is its scale alone', () => {
    expect(glancePlotOf(shelvedIn({}), USUAL_SCALE, 300)).toMatchObject({ band: null, centre: null, interval: null, entered: null, beyond: null });
  });

  test('the labels above stand where the strips have these values', () => {
    const labels = glanceLabels(USUAL_SCALE, 340);
    const { left, right, zero } = glancePlotOf(shelvedIn({}), USUAL_SCALE, 340);
    expect(labels.map(({ text }) => text)).toEqual(['\u221220', '\u221210', '0', '+10', '+20']);
    expect([labels[0]!.x, labels[2]!.x, labels[4]!.x]).toEqual([left, zero, right]);
  });
});
