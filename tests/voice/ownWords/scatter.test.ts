// Contract of the scatter: what varies between takes of one word counts less, by the covariance of takes laid over each other and a
// tenth of the mean variance. Worked out by hand.
import { expect, test } from 'vitest';
import type { Cepstra } from '../../../src/voice/ownWords/cepstra.ts';
import { scatterOf } from '../../../src/voice/ownWords/scatter.ts';

const row = (...values: number[]): Cepstra => ({ values: Float32Array.from(values), length: 1, width: values.length });
const about = (...values: number[]) => values.map((value) => expect.closeTo(value, 5));

test('one number that differs by 2 between two takes: its variance is 4, and 0.4 is added', () => {
  expect([...scatterOf([[row(0), row(2)]])(row(3)).values]).toEqual(about(3 / Math.sqrt(4.4)));
});

test('two numbers that vary each by itself, over two words', () => {
  const measured = scatterOf([
    [row(0, 0), row(2, 0)],
    [row(5, 0), row(5, 1)],
  ]);
  // Variances 2 and 0.5; a tenth of their mean, 0.125, is added to each.
  expect([...measured(row(1, 1)).values]).toEqual(about(1 / Math.sqrt(2.125), 1 / Math.sqrt(0.625)));
});

test('two numbers that vary together count as one', () => {
  // Covariance 1 everywhere, 0.1 added: L = [[1.048809, 0], [0.953463, 0.436931]]; L x = (1, 0).
  expect([...scatterOf([[row(0, 0), row(1, 1)]])(row(1, 0)).values]).toEqual(about(0.953463, -2.080626));
});

test('every row is measured, every pair of takes counts, and takes of different words are not compared', () => {
  const measured = scatterOf([[row(0), row(1), row(3)], [row(50)]]);
  // Differences 1, 3 and 2: 14 / 3, and a tenth of it.
  const unit = Math.sqrt(1.1 * (14 / 3));
  expect([...measured({ values: Float32Array.of(2, -4), length: 2, width: 1 }).values]).toEqual(about(2 / unit, -4 / unit));
});

test('without two takes of any word, shapes stay as they are', () => {
  expect(scatterOf([[row(1)], [row(2)]])(row(7)).values).toEqual(Float32Array.of(7));
  expect(scatterOf([])(row(7)).values).toEqual(Float32Array.of(7));
});
