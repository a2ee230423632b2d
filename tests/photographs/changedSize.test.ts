import { describe, expect, test } from 'vitest';
import { changedSize } from '../../src/photographs/changedSize.ts';

const TAKEN = { width: 6000, height: 4000 };

describe('the size of a file', () => {
  test.each([
    [6000, 4000],
    [4000, 6000],
    [5984, 3992],
  ])('of %s × %s pixels is as taken: turned, or less the border that a camera leaves out', (width, height) => {
    expect(changedSize(TAKEN, { width, height })).toEqual({ is: 'as taken' });
  });

  test.each([
    [1500, 1000, 0.25],
    [2000, 3000, 0.5],
    [9000, 6000, 1.5],
  ])('of %s × %s pixels was resized to a share of %s', (width, height, share) => {
    expect(changedSize(TAKEN, { width, height })).toEqual({ is: 'resized', share: expect.closeTo(share, 6) });
  });

  test.each([
    [4000, 4000],
    [6000, 3375],
    [2400, 1500],
  ])('of %s × %s pixels was cropped', (width, height) => {
    expect(changedSize(TAKEN, { width, height })).toEqual({ is: 'cropped' });
  });
});
