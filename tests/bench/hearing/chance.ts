// Seeded chance for the hearing bench: xorshift32 (Marsaglia 2003) and Gaussian values by Box and Muller, so that every
// run hears the same rooms, noises and words.

export interface Chance {
  /** Evenly in [0, 1). */
  next(): number;
  /** Gaussian, mean 0, variance 1. */
  gaussian(): number;
  /** A whole number in [0, below). */
  whole(below: number): number;
  between(low: number, high: number): number;
}

export function chanceFrom(seed: number): Chance {
  let state = (Math.imul(seed, 2654435761) ^ 0x9e3779b9) >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4294967296;
  };
  return {
    next,
    gaussian: () => Math.sqrt(-2 * Math.log(next() + 1e-12)) * Math.cos(2 * Math.PI * next()),
    whole: (below) => Math.floor(next() * below),
    between: (low, high) => low + (high - low) * next(),
  };
}

export function shuffled<T>(list: readonly T[], chance: Chance): T[] {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = chance.whole(i + 1);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}
