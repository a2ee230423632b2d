// Combining estimates against the worked example of the literature: thirteen trials of the BCG vaccine, G. A. Colditz
// et al., JAMA 271:698-702 (1994), counts as in the R data set dat.bcg (package metadat). Log risk ratios and their
// variances are worked out here from the counts. Q(12) = 152.233, tau² = 0.309 (DerSimonian-Laird) and the estimate
// −0.714 are those of the documentation of R's metafor, from memory; the plain loops below reach them independently.
import { describe, expect, it } from 'vitest';
import { combine, compare } from '../../src/logbook/combined.ts';

/** Ill and well among the vaccinated, ill and well among the others. */
const TRIALS = [
  [4, 119, 11, 128],
  [6, 300, 29, 274],
  [3, 228, 11, 209],
  [62, 13536, 248, 12619],
  [33, 5036, 47, 5761],
  [180, 1361, 372, 1079],
  [8, 2537, 10, 619],
  [505, 87886, 499, 87892],
  [29, 7470, 45, 7232],
  [17, 1699, 65, 1600],
  [186, 50448, 141, 27197],
  [5, 2493, 3, 2338],
  [27, 16886, 29, 17825],
] as const;

const estimates = TRIALS.map(([ill, well, illOther, wellOther]) => ({
  value: Math.log(ill / (ill + well) / (illOther / (illOther + wellOther))),
  variance: 1 / ill - 1 / (ill + well) + 1 / illOther - 1 / (illOther + wellOther),
}));

describe('thirteen trials of the BCG vaccine', () => {
  const all = combine(estimates);

  it('differ by Q = 152.233 with 12 degrees of freedom', () => {
    expect(all?.q).toBeCloseTo(152.233, 3);
    expect(all?.freedom).toBe(12);
  });

  it('vary between trials by tau² = 0.3088, I² = 92.12 %', () => {
    expect(all?.tau2).toBeCloseTo(0.3088, 4);
    expect(all?.i2).toBeCloseTo(0.9212, 4);
  });

  it('together say −0.7141, from −1.0644 to −0.3638', () => {
    expect(all?.random.value).toBeCloseTo(-0.7141, 4);
    expect(all?.random.from).toBeCloseTo(-1.0644, 3);
    expect(all?.random.to).toBeCloseTo(-0.3638, 3);
  });

  it('give the same by sums of weights alone (Q = Σwy² − (Σwy)²/Σw)', () => {
    let [w, wy, wyy, ww] = [0, 0, 0, 0];
    for (const { value, variance } of estimates) {
      w += 1 / variance;
      wy += value / variance;
      wyy += value ** 2 / variance;
      ww += variance ** -2;
    }
    const q = wyy - wy ** 2 / w;
    expect(all?.q).toBeCloseTo(q, 6);
    expect(all?.fixed.value).toBeCloseTo(wy / w, 9);
    expect(all?.tau2).toBeCloseTo((q - 12) / (w - ww / w), 9);
  });
});

describe('sweeps of one situation', () => {
  it('that agree have no spread of their own, and count by their sureness', () => {
    const both = combine([
      { value: 4, variance: 1 },
      { value: 5, variance: 0.25 },
    ]);
    expect(both).toMatchObject({ tau2: 0, i2: 0 });
    expect(both?.random.value).toBeCloseTo(4.8, 9);
  });

  it('differ when they lie further apart than both intervals together allow', () => {
    expect(compare({ value: 4, variance: 0.25 }, { value: 5, variance: 0.25 }).differ).toBe(false);
    expect(compare({ value: 4, variance: 0.25 }, { value: 6, variance: 0.25 }).differ).toBe(true);
  });

  it('are not combined when there is only one', () => {
    expect(combine([{ value: 4, variance: 1 }])).toBeNull();
  });
});
