// How loud a sound is, and how loud its speech is: levels are root mean squares of samples.

export function level(samples: Float32Array, from = 0, to = samples.length): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i]! * samples[i]!;
  return Math.sqrt(sum / Math.max(1, to - from));
}

const STRETCH = 0.02;

/** The level of the stretches of 20 ms within 30 dB of the loudest, so that pauses do not count. */
export function speechLevel(samples: Float32Array, rate: number): number {
  const loud = loudStretches(samples, rate);
  return Math.sqrt(loud.reduce((sum, { level: l }) => sum + l * l, 0) / Math.max(1, loud.length));
}

/** The sample at which the speech ends: the end of the last stretch within 30 dB of the loudest. */
export function speechEnd(samples: Float32Array, rate: number): number {
  return loudStretches(samples, rate).at(-1)?.end ?? samples.length;
}

function loudStretches(samples: Float32Array, rate: number): { level: number; end: number }[] {
  const length = Math.round(STRETCH * rate);
  const all: { level: number; end: number }[] = [];
  for (let at = 0; at + length <= samples.length; at += length) {
    all.push({ level: level(samples, at, at + length), end: at + length });
  }
  const top = Math.max(...all.map(({ level: l }) => l));
  return all.filter(({ level: l }) => l > top * 0.0316);
}

export function scaled(samples: Float32Array, factor: number): Float32Array {
  return samples.map((value) => value * factor);
}
