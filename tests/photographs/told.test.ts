// Contracts of what is told from the figures of a photograph, each at its limit.
import { describe, expect, test } from 'vitest';
import { checkEntered, type CheckShot } from '../../src/photographs/checkEntered.ts';
import { changedSize } from '../../src/photographs/changedSize.ts';
import type { EdgeMeasure } from '../../src/photographs/edge.ts';
import type { EdgeSpread } from '../../src/photographs/edgeSpread.ts';
import { binningCorrection, binWidth, edgeContrast, transferWeights } from '../../src/photographs/edgeTransfer.ts';
import { edgeWindow } from '../../src/photographs/edgeWindow.ts';
import { joinCentres } from '../../src/photographs/joinedCentre.ts';
import { motionIn } from '../../src/photographs/motion.ts';

describe('motion', () => {
  const edge = (runs: 'upright' | 'level', mtf50: number, reach = 1): EdgeMeasure =>
    ({ runs, mtf50, interval: { low: mtf50 / reach, high: mtf50 * reach } }) as EdgeMeasure;

  test('is told from a ratio of 1.25', () => {
    expect(motionIn([edge('upright', 0.2), edge('level', 0.249)])).toEqual({ is: 'alike' });
    expect(motionIn([edge('upright', 0.2), edge('level', 0.251)])).toMatchObject({ is: 'moved', way: 'sideways', ratio: expect.closeTo(1.255, 6) });
    expect(motionIn([edge('upright', 0.3), edge('level', 0.2)])).toMatchObject({ is: 'moved', way: 'up and down', ratio: expect.closeTo(1.5, 6) });
  });

  test('must be more than both doubts together', () => {
    // Each is known to a factor of 1.2; together to exp(0.2578), 1.294.
    expect(motionIn([edge('upright', 0.2, 1.2), edge('level', 0.258, 1.2)]).is).toBe('alike');
    expect(motionIn([edge('upright', 0.2, 1.2), edge('level', 0.26, 1.2)]).is).toBe('moved');
    // Two each way, 0.2 and 0.2 times 1.3: the mean scatters by more than either says.
    const scattered = (level: number) => [edge('upright', 0.2), edge('upright', 0.26), edge('level', level), edge('level', 1.3 * level)];
    expect(motionIn(scattered(0.285)).is).toBe('alike');
    expect(motionIn(scattered(0.295)).is).toBe('moved');
  });

  test('needs edges both ways', () => {
    expect([motionIn([]).is, motionIn([edge('level', 0.2)]).is, motionIn([edge('upright', 0.2)]).is]).toEqual(['not told', 'not told', 'not told']);
  });
});

describe('two centres', () => {
  const known = (value: number, doubt: number) => ({ value, low: value - 1.959964 * doubt, high: value + 1.959964 * doubt });

  test('agree where their difference may be nothing, and join by one over the variance', () => {
    expect(joinCentres(known(4, 1), known(5, 2))).toMatchObject({ is: 'agree', joint: { value: expect.closeTo(4.2, 9) } });
    const { joint } = joinCentres(known(4, 1), known(5, 2)) as { joint: { low: number; high: number } };
    expect((joint.high - joint.low) / 2 / 1.959964).toBeCloseTo(Math.sqrt(0.8), 9);
    expect(joinCentres(known(4, 0), known(4, 0))).toMatchObject({ joint: { value: 4, low: 4, high: 4 } });
  });

  test('differ where it is more than both allow, up or down', () => {
    // 1.96 times the root of 5 is 4.383.
    expect([4.38, 4.39, -4.38, -4.39].map((by) => joinCentres(known(0, 1), known(by, 2)).is)).toEqual(['agree', 'differ', 'agree', 'differ']);
    expect(joinCentres(known(0, 1), known(9, 2)).difference.value).toBe(9);
  });
});

describe('the size of a file', () => {
  const written = { width: 6000, height: 4000 };
  const now = (width: number, height: number) => changedSize(written, { width, height });

  test('is as taken to a hundredth, either way up', () => {
    expect([now(6000, 4000), now(4000, 6000), now(6050, 4030), now(5950, 3970)].map(({ is }) => is)).toEqual(['as taken', 'as taken', 'as taken', 'as taken']);
    expect([now(6072, 4048), now(5928, 3952)].map(({ is }) => is)).toEqual(['resized', 'resized']);
    expect(now(3000, 2000)).toEqual({ is: 'resized', share: 0.5 });
  });

  test('is cropped where its shape is off by more than a hundredth, longer or shorter', () => {
    expect([now(6000, 3970), now(5950, 4000)].map(({ is }) => is)).toEqual(['as taken', 'as taken']);
    expect([now(6000, 3950), now(5930, 4000)].map(({ is }) => is)).toEqual(['cropped', 'cropped']);
  });
});

describe('a check of what was entered', () => {
  const sure = (value: number, doubt = 0.001) => ({ value, low: value - 1.959964 * doubt, high: value + 1.959964 * doubt });
  const shots = (near: readonly number[], far: readonly number[]): CheckShot[] => [
    ...near.map((value): CheckShot => ({ thrown: 'near', error: sure(value) })),
    ...far.map((value): CheckShot => ({ thrown: 'far', error: sure(value) })),
  ];
  const depth = { front: 40, behind: 80, total: 120 } as never;
  const checked = (near: readonly number[], far: readonly number[], reference = sure(0)) => checkEntered(shots(near, far), reference, depth)!;

  test('is the mean of both ways, each as one, less the reference', () => {
    expect(checked([10, 12, 14], [20], sure(5)).bias.value).toBeCloseTo((12 + 20) / 2 - 5, 9);
    expect(checked([10, 12, 14], []).bias.value).toBeCloseTo(12, 9);
  });

  test('scatters within each way, over the shots less the ways', () => {
    // Squares 2 + 0 + 2 and 0.5 + 0.5 of five shots in two ways: 5 / 3.
    expect(checked([8, 10, 12], [3, 4]).repeatability).toBeCloseTo(Math.sqrt((4 + 4 + 0.5) / 3), 6);
    expect(checkEntered(shots([5], [5]), null, depth)?.repeatability).toBeCloseTo(0.001, 9);
  });

  test('tells the two ways apart where both were shot, and more than once', () => {
    expect(checked([8, 10, 12], [3, 4]).nearLessFar?.value).toBeCloseTo(6.5, 9);
    expect([checked([8, 10], []).nearLessFar, checked([8], [10]).nearLessFar]).toEqual([null, null]);
    expect(checked([8, 10], [9]).nearLessFar).not.toBeNull();
  });

  test('confirms what uses half the depth on its own side at most, and shifts what uses more', () => {
    const at = (value: number) => checked([value, value], [value, value]).verdict;
    expect([at(39.9), at(-19.9), at(40.1), at(-20.1)]).toEqual([
      { is: 'confirmed' },
      { is: 'confirmed' },
      { is: 'shifted', lies: 'behind' },
      { is: 'shifted', lies: 'in front' },
    ]);
  });

  test('asks for as many more as would tell, an even number in all, and twelve at most', () => {
    const more = (off: number, ...further: number[]) => checked([off, -off, ...further], [off, -off]).verdict;
    // A scatter of 30: Student's t of 10, 2.228, times 30 over the root of 12 is 19.3, of 20 in front; of ten shots it would be 21.9.
    expect(more(30 / Math.SQRT2)).toEqual({ is: 'not enough', more: 8 });
    expect(more(60 / Math.SQRT2)).toEqual({ is: 'not enough', more: 12 });
    expect(more(25 / Math.SQRT2, 0)).toMatchObject({ is: 'not enough', more: 3 });
    // A scatter of 21.2: eight shots are known to 18.4, which leaves out nothing at 20; fourteen to 12.4, which does not at -10, nor fits half of 40.
    const moved = (by: number) => checked([by + 15, by - 15], [by + 15, by - 15]).verdict;
    expect([moved(20), moved(-10)]).toEqual([
      { is: 'not enough', more: 4 },
      { is: 'not enough', more: 12 },
    ]);
  });

  test('wants four shots', () => {
    expect(checked([0, 0], [0]).verdict).toEqual({ is: 'not enough', more: 1 });
    expect(checked([0, 0], [0, 0]).verdict).toEqual({ is: 'confirmed' });
  });
});

describe('the transfer of an edge', () => {
  test('is laid under a window that is flat about it and falls as a cosine to nothing', () => {
    const window = edgeWindow(4, 2);
    expect(window).toHaveLength(32);
    expect([window[0], window[31]]).toEqual([0, 0]);
    // Bins 8 to 23 lie within two pixels; one pixel further, a half.
    expect([window[8], window[23]]).toEqual([1, 1]);
    expect(window[4]! + window[3]!).toBeCloseTo(1, 9);
    expect(window[7]).toBeCloseTo(0.5 * (1 + Math.cos((Math.PI * 0.125) / 2)), 9);
    expect(window[24]).toBeCloseTo(window[7]!, 12);
  });

  test('is the slow transform of the derivative, whichever way it is reckoned', () => {
    const light = Float64Array.from({ length: 32 }, (_, bin) => 1 / (1 + Math.exp(-(bin - 15.2) / 2)));
    const window = edgeWindow(4, 2);
    const spread: EdgeSpread = { light, counts: [1, 1, 1, 1], apart: 1 / 12, noise: 0 };
    const lean = 0.1;
    const line = Array.from({ length: 32 }, (_, bin) => (bin === 0 || bin === 31 ? 0 : (window[bin]! * (light[bin + 1]! - light[bin - 1]!)) / 2));
    const whole = line.reduce((sum, each) => sum + each, 0);
    for (const frequency of [0, 0.1, 0.35]) {
      const turn = 2 * Math.PI * frequency * binWidth(lean);
      const [x, y] = [
        line.reduce((sum, each, bin) => sum + each * Math.cos(turn * bin), 0),
        line.reduce((sum, each, bin) => sum + each * Math.sin(turn * bin), 0),
      ];
      const share = (Math.hypot(x, y) / whole) * binningCorrection(frequency, lean, 1 / 12);
      expect(edgeContrast(spread, window, lean)(frequency)).toBeCloseTo(share, 9);
      const { real, imaginary } = transferWeights(window, frequency, lean);
      const by = (weights: Float64Array) => light.reduce((sum, each, bin) => sum + each * weights[bin]!, 0);
      expect((Math.hypot(by(real), by(imaginary)) / whole) * binningCorrection(frequency, lean, 1 / 12)).toBeCloseTo(share, 9);
    }
  });

  test('is corrected for the difference over two bins and for the bins', () => {
    // At half a cycle a pixel x is a quarter of a turn: sin(pi / 4) over pi / 4 is 0.90032.
    expect(binningCorrection(0.5, 0, 0)).toBeCloseTo(1 / 0.900316, 5);
    expect(binningCorrection(0, 0.3, 1)).toBe(1);
    expect(binningCorrection(0.5, 0, 1 / 12) / binningCorrection(0.5, 0, 0)).toBeCloseTo(Math.exp((2 * (Math.PI * 0.5) ** 2) / 12 / 16), 9);
    expect(binningCorrection(0.5, 0.75, 0)).toBeCloseTo(binningCorrection(0.4, 0, 0), 9);
    expect(binWidth(0.75)).toBeCloseTo(0.2, 12);
  });
});
