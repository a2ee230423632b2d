// The shape of the sound over time: mel cepstra (Davis and Mermelstein 1980) with a sine lifter (Juang, Rabiner and
// Wilpon 1987), their mean removed so that the microphone's colour does not count, and their slopes (Furui 1986).
import type { SoundFrame } from './bands.ts';

/** `length` rows of `width` numbers. */
export interface Cepstra {
  readonly values: Float32Array;
  readonly length: number;
  readonly width: number;
}

const CEPSTRA = 11;
const LOUDNESS = 0.7;
const SLOPE = 0.7 * 3;
const SLOPE_REACH = 3;
const SLOPE_NORM = 28;

const lifter = (index: number): number => (index === 0 ? LOUDNESS : (1 + 4 * Math.sin((Math.PI * index) / 22)) / 3);

const cosines = new Map<number, Float32Array>();
/** The lifted cosine transform for so many bands, row by row. */
function cosinesFor(bands: number): Float32Array {
  let table = cosines.get(bands);
  if (table === undefined) {
    table = Float32Array.from({ length: CEPSTRA * bands }, (_, at) => {
      const index = Math.floor(at / bands);
      const cosine = Math.cos((Math.PI * index * ((at % bands) + 0.5)) / bands);
      return cosine * Math.sqrt(2 / bands) * lifter(index);
    });
    cosines.set(bands, table);
  }
  return table;
}

export function shapeOf(frames: readonly SoundFrame[]): Cepstra {
  const length = frames.length;
  const bands = frames[0]?.length ?? 0;
  const table = cosinesFor(bands);
  const width = 2 * CEPSTRA;
  const values = new Float32Array(length * width);
  const logs = new Float32Array(bands);
  for (let t = 0; t < length; t++) {
    const frame = frames[t]!;
    for (let b = 0; b < bands; b++) logs[b] = Math.log(frame[b]!);
    for (let c = 0; c < CEPSTRA; c++) {
      let sum = 0;
      for (let b = 0; b < bands; b++) sum += table[c * bands + b]! * logs[b]!;
      values[t * width + c] = sum;
    }
  }
  for (let c = 0; c < CEPSTRA; c++) {
    let mean = 0;
    for (let t = 0; t < length; t++) mean += values[t * width + c]! / length;
    for (let t = 0; t < length; t++) values[t * width + c]! -= mean;
  }
  for (let t = 0; t < length; t++) {
    for (let c = 0; c < CEPSTRA; c++) {
      let slope = 0;
      for (let k = 1; k <= SLOPE_REACH; k++) {
        const later = Math.min(length - 1, t + k) * width + c;
        const earlier = Math.max(0, t - k) * width + c;
        slope += k * (values[later]! - values[earlier]!);
      }
      values[t * width + CEPSTRA + c] = (SLOPE * slope) / SLOPE_NORM;
    }
  }
  return { values, length, width };
}
