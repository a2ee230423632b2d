// The bands in which own words are compared: one bank for every microphone, evenly spaced in mel (O'Shaughnessy 1987:
// m = 1127 ln(1 + f/700)), of which a slow sample rate simply has fewer. So templates outlive a change of microphone.
import { spectrumMeter } from './spectrum.ts';

/** The power in each band, lowest band first, of 25 ms of sound. */
export type SoundFrame = Float32Array;

/** Seconds from one frame to the next. */
export const HOP = 0.01;
const WINDOW = 0.025;
const COUNT = 28;
const LOWEST = 120;
const HIGHEST = 7000;
/** What a frame of digital silence is given, so that logarithms exist; far under any microphone's own noise. */
const SILENCE = 1e-13;

const toMel = (hertz: number): number => 1127 * Math.log(1 + hertz / 700);
const toHertz = (mel: number): number => 700 * (Math.exp(mel / 1127) - 1);
const corner = (index: number): number => toHertz(toMel(LOWEST) + ((toMel(HIGHEST) - toMel(LOWEST)) * index) / (COUNT + 1));

/** How many bands of the bank a sample rate can fill. */
export function bandsAt(rate: number): number {
  let count = 0;
  while (count < COUNT && corner(count + 2) <= rate * 0.48) count++;
  return count;
}

interface Filter {
  readonly first: number;
  readonly weights: Float32Array;
}

/** Triangular bands over the bins of a spectrum, with the treble raised as the ear expects it (6 dB an octave). */
function bank(rate: number, size: number): Filter[] {
  const width = rate / size;
  return Array.from({ length: bandsAt(rate) }, (_, band) => {
    const [low, middle, high] = [corner(band), corner(band + 1), corner(band + 2)];
    const first = Math.ceil(low / width);
    const weights: number[] = [];
    for (let bin = first; bin * width <= high; bin++) {
      const f = bin * width;
      const triangle = f < middle ? (f - low) / (middle - low) : (high - f) / (high - middle);
      weights.push(triangle * raised(f) * width);
    }
    return { first, weights: Float32Array.from(weights) };
  });
}

/** The gain of x[n] - 0.95 x[n-1] at 16 kHz, whatever the rate really is. */
const raised = (hertz: number): number => 1 + 0.95 ** 2 - 2 * 0.95 * Math.cos((2 * Math.PI * hertz) / 16000);

/** Cuts a stream of samples into frames, one each 10 ms. */
export class Frames {
  readonly bands: number;
  private readonly stretch: Float32Array;
  private readonly hop: number;
  private readonly bank: readonly Filter[];
  private readonly meter: ReturnType<typeof spectrumMeter>;
  private filled = 0;
  private readonly drift: number;
  private owed = 0;

  constructor(rate: number) {
    const length = Math.round(WINDOW * rate);
    this.stretch = new Float32Array(length);
    this.hop = Math.floor(HOP * rate);
    this.drift = HOP * rate - this.hop;
    this.meter = spectrumMeter(length, rate);
    this.bank = bank(rate, this.meter.size);
    this.bands = this.bank.length;
  }

  push(samples: Float32Array): SoundFrame[] {
    const out: SoundFrame[] = [];
    for (let at = 0; at < samples.length;) {
      const taken = Math.min(samples.length - at, this.stretch.length - this.filled);
      this.stretch.set(samples.subarray(at, at + taken), this.filled);
      this.filled += taken;
      at += taken;
      if (this.filled < this.stretch.length) break;
      out.push(this.frame());
      // A rate such as 44.1 kHz has no whole number of samples in 10 ms: the fraction is paid back when it makes one.
      this.owed += this.drift;
      const step = this.hop + Math.floor(this.owed);
      this.owed %= 1;
      this.stretch.copyWithin(0, step);
      this.filled -= step;
    }
    return out;
  }

  private frame(): SoundFrame {
    const power = this.meter.measure(this.stretch);
    return Float32Array.from(this.bank, ({ first, weights }) => {
      let sum = SILENCE;
      for (let i = 0; i < weights.length; i++) sum += weights[i]! * power[first + i]!;
      return sum;
    });
  }
}
