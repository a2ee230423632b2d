// Repeatable chance for the practice camera, the bench and the tests: the same seed always gives the same run.

/** A source of numbers in [0, 1). */
export type Random = () => number;

/** Mulberry32 (T. Ettinger 2017, public domain): 2^32 period, ample for a simulated session. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A draw from a normal distribution (Box & Muller 1958, Ann. Math. Stat. 29:610). */
export function normal(random: Random, mean: number, sd: number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return mean + sd * radius * Math.cos(2 * Math.PI * random());
}
