// Contract of a name with a zoom and another number: two lengths together are surer than one alone.
import { expect, test } from 'vitest';
import { focalInName } from '../../src/kit/focalInName.ts';

test('the two lengths of a zoom go before a bare number', () => {
  expect(focalInName('Orrin 24-70 50')).toEqual({ from: 24, to: 70 });
});
