// The power spectrum of one short stretch of sound: a radix-2 fast Fourier transform (Cooley and Tukey 1965) under a
// Hamming window, scaled to power per hertz so that microphones of different sample rates give the same numbers.

/** Measures stretches of `length` samples, taken `rate` times a second; the answer is overwritten by the next call. */
export function spectrumMeter(length: number, rate: number): { size: number; measure(stretch: Float32Array): Float32Array } {
  let size = 1;
  while (size < length) size *= 2;
  const half = size / 2;
  const hamming = Float32Array.from({ length }, (_, i) => 0.54 - 0.46 * Math.cos((2 * Math.PI * i) / (length - 1)));
  const energy = hamming.reduce((sum, w) => sum + w * w, 0);
  const cosine = Float32Array.from({ length: half }, (_, i) => Math.cos((2 * Math.PI * i) / size));
  const sine = Float32Array.from({ length: half }, (_, i) => -Math.sin((2 * Math.PI * i) / size));
  const order = bitReversed(size);
  const re = new Float32Array(size);
  const im = new Float32Array(size);
  const power = new Float32Array(half + 1);

  const measure = (stretch: Float32Array): Float32Array => {
    for (let i = 0; i < size; i++) {
      const from = order[i]!;
      re[i] = from < length ? stretch[from]! * hamming[from]! : 0;
      im[i] = 0;
    }
    for (let span = 2, stride = half; span <= size; span *= 2, stride /= 2) {
      for (let start = 0; start < size; start += span) {
        for (let k = 0, turn = 0; k < span / 2; k++, turn += stride) {
          const u = start + k;
          const v = u + span / 2;
          const a = re[v]! * cosine[turn]! - im[v]! * sine[turn]!;
          const b = re[v]! * sine[turn]! + im[v]! * cosine[turn]!;
          re[v] = re[u]! - a;
          im[v] = im[u]! - b;
          re[u] = re[u]! + a;
          im[u] = im[u]! + b;
        }
      }
    }
    for (let k = 0; k <= half; k++) power[k] = (re[k]! * re[k]! + im[k]! * im[k]!) / (rate * energy);
    return power;
  };
  return { size, measure };
}

function bitReversed(size: number): Uint16Array {
  const order = new Uint16Array(size);
  for (let i = 0, j = 0; i < size; i++) {
    order[i] = j;
    let bit = size >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
  }
  return order;
}
