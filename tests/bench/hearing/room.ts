// A simulated room: the image-source response of a box (Allen and Berkley 1979) with even absorption by Sabine's
// formula, and fast convolution with it.
import { chanceFrom } from './chance.ts';

type Point = readonly [number, number, number];
interface Box {
  readonly rate: number;
  readonly size: Point;
  readonly source: Point;
  readonly microphone: Point;
  /** Seconds until the echo has fallen by 60 dB. */
  readonly echo: number;
  readonly seed: number;
}

const SOUND = 343;

function response({ rate, size, source, microphone, echo, seed }: Box): Float32Array {
  const [x, y, z] = size;
  const surface = 2 * (x * y + x * z + y * z);
  const absorbed = Math.min(0.95, (0.161 * x * y * z) / (surface * echo));
  const reflected = Math.sqrt(1 - absorbed);
  const length = Math.ceil(rate * echo * 1.1);
  const out = new Float32Array(length);
  const chance = chanceFrom(seed);
  const reach = size.map((side) => Math.ceil(((length / rate) * SOUND) / (2 * side)));
  for (let i = -reach[0]!; i <= reach[0]!; i++) {
    for (let j = -reach[1]!; j <= reach[1]!; j++) {
      for (let k = -reach[2]!; k <= reach[2]!; k++) {
        for (let mirror = 0; mirror < 8; mirror++) {
          const cell = [i, j, k];
          let squares = 0;
          let bounces = 0;
          for (let axis = 0; axis < 3; axis++) {
            const flipped = (mirror >> axis) & 1;
            const place = (flipped ? -source[axis]! : source[axis]!) + 2 * cell[axis]! * size[axis]! - microphone[axis]!;
            squares += place * place;
            bounces += Math.abs(cell[axis]!) + Math.abs(cell[axis]! - flipped);
          }
          // Real walls are not mirrors: a few centimetres of jitter keep the echoes from lining up.
          const way = Math.sqrt(squares) + (bounces > 0 ? (chance.next() - 0.5) * 0.04 : 0);
          const at = (way / SOUND) * rate;
          const whole = Math.floor(at);
          if (whole + 1 >= length) continue;
          const gain = reflected ** bounces / (4 * Math.PI * Math.max(way, 0.1));
          out[whole] = out[whole]! + gain * (1 - (at - whole));
          out[whole + 1] = out[whole + 1]! + gain * (at - whole);
        }
      }
    }
  }
  return withoutRumble(out, rate);
}

/**
 * Images of one sign add up to a rumble no room has: the high-pass at 100 Hz that Allen and Berkley give (appendix
 * A).
 */
function withoutRumble(samples: Float32Array, rate: number): Float32Array {
  const turn = (2 * Math.PI * 100) / rate;
  const decay = Math.exp(-turn);
  let last = 0;
  let before = 0;
  return samples.map((value) => {
    const now = 2 * decay * Math.cos(turn) * last - decay * decay * before + value;
    const passed = now - (1 + decay) * last + decay * before;
    before = last;
    last = now;
    return passed;
  });
}

export interface Room {
  readonly response: Float32Array;
  /** Samples from the mouth to the microphone. */
  readonly delay: number;
}

/** Seconds until the echo has fallen by 60 dB, least and most. */
export type Echo = readonly [least: number, most: number];

/** Living rooms and workshops with the person 1–3 m from the laptop. */
export function rooms(count: number, seed: number, rate: number, [least, most]: Echo): Room[] {
  const chance = chanceFrom(seed);
  return Array.from({ length: count }, (_, index) => {
    const size: Point = [chance.between(3.2, 5.2), chance.between(2.8, 4.4), chance.between(2.4, 2.7)];
    const microphone: Point = [chance.between(0.6, 0.9), chance.between(0.8, 1.3), 0.8];
    let source: Point;
    let away: number;
    do {
      source = [chance.between(0.3, size[0] - 0.3), chance.between(0.3, size[1] - 0.3), chance.between(1.1, 1.6)];
      away = Math.hypot(source[0] - microphone[0], source[1] - microphone[1], source[2] - microphone[2]);
    } while (away < 1 || away > 3);
    const echo = chance.between(least, most);
    return {
      response: response({ rate, size, source, microphone, echo, seed: seed + index }),
      delay: Math.round((away / SOUND) * rate),
    };
  });
}

/** The sound as the microphone hears it. */
export function heardIn(room: Room, samples: Float32Array): Float32Array {
  return convolved(samples, room.response);
}

function convolved(a: Float32Array, b: Float32Array): Float32Array {
  let size = 1;
  while (size < a.length + b.length) size *= 2;
  const real = new Float64Array(size);
  const imaginary = new Float64Array(size);
  real.set(a);
  imaginary.set(b);
  // Two real transforms in one: a in the real part, b in the imaginary part; their product is the square's imaginary
  // half.
  transform(real, imaginary, false);
  const productReal = new Float64Array(size);
  const productImaginary = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    const m = (size - k) % size;
    const ar = (real[k]! + real[m]!) / 2;
    const ai = (imaginary[k]! - imaginary[m]!) / 2;
    const br = (imaginary[k]! + imaginary[m]!) / 2;
    const bi = (real[m]! - real[k]!) / 2;
    productReal[k] = ar * br - ai * bi;
    productImaginary[k] = ar * bi + ai * br;
  }
  transform(productReal, productImaginary, true);
  return Float32Array.from(productReal.subarray(0, a.length + b.length - 1));
}

function transform(re: Float64Array, im: Float64Array, inverse: boolean): void {
  const n = re.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j]!, re[i]!];
      [im[i], im[j]] = [im[j]!, im[i]!];
    }
  }
  for (let span = 2; span <= n; span <<= 1) {
    const angle = ((inverse ? 2 : -2) * Math.PI) / span;
    for (let k = 0; k < span / 2; k++) {
      const wr = Math.cos(angle * k);
      const wi = Math.sin(angle * k);
      for (let i = k; i < n; i += span) {
        const u = i + span / 2;
        const tr = re[u]! * wr - im[u]! * wi;
        const ti = re[u]! * wi + im[u]! * wr;
        re[u] = re[i]! - tr;
        im[u] = im[i]! - ti;
        re[i] = re[i]! + tr;
        im[i] = im[i]! + ti;
      }
    }
  }
  if (!inverse) return;
  for (let i = 0; i < n; i++) {
    re[i] = re[i]! / n;
    im[i] = im[i]! / n;
  }
}
