import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DepthOfField } from '../../src/optics/depthOfField.ts';
import { placeDepth, type FrontShare } from '../../src/optics/placement.ts';
import { degrees } from '../../src/optics/quantity.ts';
import type { PrintFactor } from '../../src/optics/print/printCheck.ts';
import { drawRamp, rampError, rampLean } from '../../src/optics/print/ramp.ts';
import { RAMP_LEAN } from '../../src/optics/print/rampLayout.ts';
import { sheets } from '../../src/optics/print/sheets.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { millimetres as mm, steps } from '../../src/units.ts';
import { words as print } from '../../src/words/en/print.ts';
import { fault, value } from './value.ts';

describe('the ramp', () => {
  it('fits one sheet of either paper, whatever the depth of field', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 5000, noNaN: true }), (depth) => {
        const ramp = drawRamp(mm(depth), { words: ['Orrin 85 f/1.8'], depth: print.depth });
        expect(sheets(ramp.drawing, 'A4', print.sheets.ramp)).toHaveLength(1);
        expect(sheets(ramp.drawing, 'Letter', print.sheets.ramp)).toHaveLength(1);
      }),
    );
  });

  it('its lines stand where their numbers say once it leans by 45°', () => {
    const { drawing } = drawRamp(mm(100), { words: [], depth: print.depth });
    const at = (label: string) => {
      // Each line is drawn just before its number.
      const line = drawing.shapes[drawing.shapes.findIndex((shape) => shape.kind === 'text' && shape.text === label) - 1]!;
      return line.kind === 'rectangle' ? line.at.y + line.height / 2 : Number.NaN;
    };
    expect((at('0') - at('+20')) * Math.SQRT1_2).toBeCloseTo(20, 9);
    expect((at('\u221220') - at('0')) * Math.SQRT1_2).toBeCloseTo(20, 9);
  });

  it('reads millimetres of focus error directly, and through print factor and lean where they differ', () => {
    expect(value(rampError(-12))).toBe(-12);
    expect(value(rampError(10, RAMP_LEAN, 0.96 as PrintFactor))).toBeCloseTo(9.6, 12);
    expect(value(rampError(10, degrees(30)))).toBeCloseTo(7.071, 3);
  });

  it('the lean comes from set-back and length, and what cannot be is asked again', () => {
    expect(value(rampLean(mm(100), mm(200)))).toBeCloseTo(30, 9);
    expect(fault(rampLean(mm(300), mm(200)))).toEqual({ is: 'set-back too large' });
    expect(fault(rampError(10, degrees(0)))).toEqual({ is: 'lean too steep or flat' });
  });
});

describe('placing the depth on purpose', () => {
  const depth: DepthOfField = { front: mm(95), behind: mm(105), total: mm(200) };
  const place = (share: number, step = 12.5) => placeDepth(steps(2), share as FrontShare, depth, mm(step), USUAL_SCALE);

  it('the share that is there already changes nothing', () => {
    expect(value(place(95 / 200))).toMatchObject({ chosen: 2, moved: 0 });
  });

  it('more in front moves focus away, so the value rises', () => {
    const placed = value(place(2 / 3));
    expect(placed).toMatchObject({ chosen: 5, onSubject: 2, moved: 3, share: 2 / 3 });
  });

  it('an endless depth and a range that ends are refused', () => {
    const endless: DepthOfField = { front: mm(95), behind: 'infinite', total: 'infinite' };
    expect(fault(placeDepth(steps(0), 0.5 as FrontShare, endless, mm(10), USUAL_SCALE))).toEqual({ is: 'depth without end' });
    expect(fault(place(1, 2))).toEqual({ is: 'share beyond the range' });
  });
});
