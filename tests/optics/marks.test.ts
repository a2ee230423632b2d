import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barAt, barIndex } from '../../src/optics/print/barSeries.ts';
import { dotsFor, readDots } from '../../src/optics/print/dots.ts';
import { measureTarget } from '../../src/optics/print/measure.ts';
import { layOutRamp, numberRamp, rampMarks, readRampNumber } from '../../src/optics/print/rampLayout.ts';
import { targetEdges, targetMarks } from '../../src/optics/print/targetMarks.ts';
import { magnification } from '../../src/optics/quantity.ts';
import { millimetres as mm } from '../../src/units.ts';
import { value } from './value.ts';

const kinds = fc.constantFrom('target' as const, 'ramp' as const);

describe('the dots of the marks', () => {
  test('say the number that was written, and nothing upside down or as the other print', () => {
    fc.assert(
      fc.property(kinds, fc.nat(511), (kind, number) => {
        const dots = dotsFor(kind, number);
        expect(dots).toHaveLength(16);
        expect(readDots(kind, dots)).toBe(number);
        expect(readDots(kind, dots.toReversed())).toBeNull();
        expect(readDots(kind === 'ramp' ? 'target' : 'ramp', dots)).toBeNull();
      }),
    );
  });

  test('one or two misread dots are always noticed', () => {
    fc.assert(
      fc.property(kinds, fc.nat(511), fc.nat(15), fc.nat(15), (kind, number, one, other) => {
        const dots = dotsFor(kind, number).map((dot, index) => (index === one || index === other ? !dot : dot));
        expect(readDots(kind, dots)).toBeNull();
      }),
    );
  });
});

describe('the lengths that the dots stand for', () => {
  test('a bar is never narrower than asked and at most 1.1 % wider, from 0.3 mm to 80 mm', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 80, noNaN: true }), (least) => {
        const bar = barAt(barIndex(mm(least))!);
        expect(bar / least).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(bar / least).toBeLessThanOrEqual(1.0111);
      }),
    );
    expect(barIndex(mm(90))).toBeNull();
  });

  test('the target’s marks say the place of its bar, and its edges lean by 5° and lie on dark squares', () => {
    const sizes = value(measureTarget({ magnification: magnification(1 / 48), pitch: mm(0.006), area: mm(2.5), sensor: { width: mm(36), height: mm(24) } }));
    expect(
      readDots(
        'target',
        targetMarks(sizes).flatMap(({ dots }) => dots),
      ),
    ).toBe(sizes.index);
    const edges = targetEdges(sizes);
    expect(edges.map(({ at, runs }) => `${at} ${runs}`).filter((name) => name === 'middle level')).toHaveLength(2);
    expect(edges).toHaveLength(20);
    for (const { from, to, runs } of edges) {
      const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
      expect(runs === 'level' ? turn : turn - 90).toBeCloseTo(5, 9);
    }
  });

  test('whatever the depth of field, the ramp’s marks say how its lines are numbered', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 5000, noNaN: true }), (depth) => {
        const numbering = numberRamp(mm(depth));
        const number = readDots(
          'ramp',
          rampMarks(layOutRamp(numbering)).flatMap(({ dots }) => dots),
        )!;
        expect(readRampNumber(number)).toEqual(numbering);
      }),
    );
  });
});
