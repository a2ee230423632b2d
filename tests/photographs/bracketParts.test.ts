// Contracts of the bracket's arithmetic and of a focus error in steps, by hand.
import { describe, expect, test } from 'vitest';
import { bracketOrder, measureBracket } from '../../src/photographs/bracket.ts';
import { focusErrorOf } from '../../src/photographs/focusError.ts';
import { boxOf } from '../../src/photographs/pixelSource.ts';
import { cutPlane, planeOf } from '../../src/photographs/plane.ts';
import { steps } from '../../src/units.ts';

const sure = (value: number, doubt = 0.1) => ({ value, low: value - 1.959964 * doubt, high: value + 1.959964 * doubt });
/** Each correction twice, off by as much up as down, which moves neither slope nor height. */
const shots = (of: (correction: number) => number, off = 1) =>
  [-8, -4, 0, 4, 8, 8, 4, 0, -4, -8].map((correction, at) => ({ correction: steps(correction), error: sure(of(correction) + (at < 5 ? off : -off)) }));

describe('a bracket', () => {
  test('tells what a step is worth and where focus lies on the target, less the reference', () => {
    const plain = measureBracket(
      shots((x) => 6 + 2 * x),
      null,
    );
    expect(plain).toMatchObject({
      ok: true,
      value: { step: { value: expect.closeTo(2, 6) }, centre: { value: expect.closeTo(-3, 6) }, atZero: expect.closeTo(6, 6), apart: [] },
    });
    expect(
      measureBracket(
        shots((x) => 6 + 2 * x),
        sure(10, 0.001),
      ),
    ).toMatchObject({ value: { centre: { value: expect.closeTo(2, 6) }, atZero: expect.closeTo(6, 6) } });
    const line = plain.ok ? plain.value.lineAt(5) : null;
    expect(line?.value).toBeCloseTo(16, 6);
    const [middle, end] = [0, 8].map((at) => (plain.ok ? plain.value.lineAt(at).high - plain.value.lineAt(at).low : NaN)) as [number, number];
    // Sixteen squares of 4 and four of 8 about the middle, 320, over ten shots: at 8 the variance is 1 + 64 / 32 times as large.
    expect(end / middle).toBeCloseTo(Math.sqrt(3), 6);
    expect(plain.ok && plain.value.lineAt(-8).high - plain.value.lineAt(-8).low).toBeCloseTo(end, 6);
  });

  test('is as sure of its centre as of the line there, and less with an unsure reference', () => {
    const width = (reference: ReturnType<typeof sure> | null) => {
      const measured = measureBracket(
        shots((x) => 2 * x, 1),
        reference,
      );
      return measured.ok ? [measured.value.centre.low, measured.value.centre.high, (measured.value.lineAt(0).high - measured.value.lineAt(0).low) / 2] : [];
    };
    const [low = NaN, high = NaN, line = NaN] = width(null);
    expect(low).toBeCloseTo(-high, 6);
    expect(high / (line / 2)).toBeGreaterThan(1);
    expect(high / (line / 2)).toBeLessThan(1.1);
    expect(width(sure(0, 3))[1]).toBeGreaterThan(3 * high);
  });

  test('has a slope that is no chance, and runs forwards', () => {
    const wavering = shots((x) => 0.001 * x, 5);
    expect(measureBracket(wavering, null)).toEqual({ ok: false, fault: { is: 'no slope' } });
    expect(
      measureBracket(
        shots((x) => -2 * x),
        null,
      ),
    ).toEqual({ ok: false, fault: { is: 'runs backwards' } });
    expect(measureBracket(shots((x) => x).slice(0, 3), null)).toEqual({ ok: false, fault: { is: 'too few shots' } });
  });

  test('is shot in far jumps, then backwards', () => {
    const order = (count: number, rounds: number) =>
      bracketOrder(
        Array.from({ length: count }, (_, at) => steps(count - 1 - at)),
        rounds,
      ).join(' ');
    expect([order(5, 1), order(4, 1), order(5, 2), order(2, 3)]).toEqual(['0 3 1 4 2', '0 2 1 3', '0 3 1 4 2 2 4 1 3 0', '0 1 1 0 0 1']);
  });
});

describe('a focus error in steps', () => {
  const depth = { front: 40, behind: 80, total: 120 } as never;
  const added = (value: number, low: number, high: number, step = { value: 5, low: 4, high: 10 }) =>
    focusErrorOf({ value, low, high }, depth, { from: 'bracket', step }).toAdd;

  test('is undone the other way, its interval as wide as error and step together make it', () => {
    expect(added(20, 10, 30)).toEqual({ value: -4, low: -7.5, high: -1 });
    expect(added(-20, -30, -10)).toEqual({ value: 4, low: 1, high: 7.5 });
    expect(added(0, -20, 20)).toEqual({ value: -0, low: -5, high: 5 });
    expect(added(5, 0, 20)).toMatchObject({ low: -5, high: expect.closeTo(0, 9) });
    expect(added(-5, -20, 0)).toMatchObject({ low: expect.closeTo(0, 9), high: 5 });
  });

  test('is none where a step may be worth nothing', () => {
    expect([added(5, 4, 6, { value: 5, low: 0, high: 10 }), added(5, 4, 6, { value: 5, low: 0.01, high: 10 }) !== null]).toEqual([null, true]);
  });

  test('is a share of the depth on its own side', () => {
    const share = (value: number) => focusErrorOf({ value, low: value, high: value }, depth, { from: 'estimate', step: 5 as never }).share;
    expect([share(40), share(-20)]).toEqual([0.5, 0.5]);
  });
});

test('light is that of the curve of sRGB, weighed by colour, and a cut repeats the border', () => {
  const plane = planeOf(Uint8ClampedArray.of(255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255, 10, 10, 10, 0), 2, 2);
  // 10 / 255 is 0.0392, on the straight part: over 12.92.
  expect([...plane.light]).toEqual([0.2126, 0.7152, 0.0722, 10 / 255 / 12.92].map((light) => expect.closeTo(light, 6)));
  expect(planeOf(Uint8ClampedArray.of(128, 128, 128, 255), 1, 1).light[0]).toBeCloseTo(0.2158605, 5);
  const small = { width: 2, height: 2, light: Float32Array.of(1, 2, 3, 4) };
  expect(cutPlane(small, -1, 1, 4, 2)).toEqual({ width: 4, height: 2, light: Float32Array.of(3, 3, 4, 4, 3, 3, 4, 4) });
  expect(cutPlane(small, 1, -1, 1, 2).light).toEqual(Float32Array.of(2, 2));
  expect(boxOf([{ x: 1, y: 8 }, { x: 5, y: 2 }], 3)).toEqual({ left: -2, top: -1, right: 8, bottom: 11 }); // prettier-ignore
});
