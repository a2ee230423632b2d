// The target's sizes and its whole page, kept to seven digits for situations from close up to far away, with words and without.
import { expect, test } from 'vitest';
import { magnification } from '../../../src/optics/quantity.ts';
import { measureTarget, sizesOf, type TargetMeasure } from '../../../src/optics/print/measure.ts';
import { mosaic } from '../../../src/optics/print/mosaic.ts';
import { drawTarget } from '../../../src/optics/print/target.ts';
import { readSensor } from '../../../src/optics/sensor.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { flat } from './flat.ts';

test('the bars, in number and width, for every magnification', () => {
  const sizes = Array.from({ length: 60 }, (_, at) => magnification(0.0005 * 1.18 ** at));
  const measured = (pitch: number, area: number) =>
    sizes.map((m) => {
      const target = measureTarget({ magnification: m, pitch: mm(pitch), area: mm(area), sensor: readSensor('36x24') });
      return target.ok ? [target.value.bars, target.value.index] : [0, 0];
    });
  expect([measured(0.006, 2.5), measured(0.004, 8), measured(0.009, 0.6), measured(0.02, 2.5)].map((row) => oneLine(row.flat()))).toMatchSnapshot('measured');
  expect(
    [0.001, 0.02, 0.3].map((m) =>
      oneLine(measureTarget({ magnification: magnification(m), pitch: mm(0.006), area: mm(2.5), sensor: readSensor('22.3x14.9') })),
    ),
  ).toMatchSnapshot('measure target');
});

const WORDS = [
  'Velde M1 with Orrin 85 f/1.8 at 85 mm',
  '4.25 m',
  'Square to within half a degree, and lit by two lamps from either side at equal angles, both of them at a metre from the target',
];
const seen = { width: mm(1800), height: mm(1200) };
const near = { width: mm(120), height: mm(80) };
const MEASURES: readonly TargetMeasure[] = [
  { ...sizesOf(63, 206), seen },
  { ...sizesOf(63, 206), seen: { width: mm(170), height: mm(130) } },
  { ...sizesOf(31, 20), seen: near },
  { ...sizesOf(31, 60), seen },
  { ...sizesOf(127, 230), seen },
  { ...sizesOf(127, 40), seen: near },
  { ...sizesOf(31, 250), seen: { width: mm(60), height: mm(40) } },
  { ...sizesOf(63, 0), seen: { width: mm(200), height: mm(133) } },
];

test.each(MEASURES.map((measure, at) => [at, measure] as const))('the page of target %i', (_, measure) => {
  const bars = mosaic(measure.bars, measure.bar, 0, 0).length;
  const sizes = [WORDS, []].map((words) => {
    const { drawing, middle, corners, scale } = drawTarget(measure, { words, scale: '100 mm' });
    return oneLine([drawing.width, drawing.height, middle, corners, scale]);
  });
  const { shapes } = drawTarget(measure, { words: WORDS, scale: '100 mm' }).drawing;
  expect([...sizes, ...flat([...shapes.slice(0, 1), ...shapes.slice(bars)])]).toMatchSnapshot();
});

test('words and scale stand between the marks from a hundred millimetres on', () => {
  const between = (field: number) => {
    const measure = { ...sizesOf(31, 0), field: mm(field), square: mm(20), gap: mm(5), seen };
    return drawTarget(measure, { words: ['a'], scale: '' }).drawing;
  };
  expect([159, 160, 161].map((field) => oneLine([between(field).width, between(field).height]))).toMatchSnapshot();
});
