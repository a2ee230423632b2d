// Finds where a word begins and ends in the stream of frames: a likelihood ratio of speech against the tracked noise
// (Sohn, Kim and Sung 1999, with their decision-directed estimate of the ratio of speech to noise), with a wide gap
// between the evidence that opens a stretch and the lack of it that closes one. An echo 30 dB under the word's peak
// counts as quiet, so that a quiet room does not make it late.
import type { SoundFrame } from './bands.ts';
import { MARGIN, piecesOf, type SoundPiece } from './pieces.ts';

export type Sounding =
  | { readonly sign: 'began' }
  /** `pieces`: in order, at least one; `loudest`: one of them; `begins`: the frame of the first evidence, which may be in none. */
  | { readonly sign: 'ended'; readonly pieces: readonly SoundPiece[]; readonly loudest: SoundPiece; readonly begins: number }
  /** Too short for a word. */
  | { readonly sign: 'slight' };

const OPENS = 0.4;
const CLOSES = 0.16;
/** Frames of evidence that open a stretch, out of so many. */
const NEEDED = 6;
const OUT_OF = 9;
/** Frames of quiet that close it. */
const HANG = 30;
const ECHO = 0.001;
/** A room rings on where the loudness is 10 dB under the peak and falls by 3 dB in 0.1 s, or 60 dB in 2 s. */
const FALLEN = 0.1;
const FALLS = 0.5;
const FALL_FRAMES = 10;
const FALL_MEAN = 5;
const WARM_UP = 25;
const REMEMBERED = 60;
/** A stretch without end is a new noise, such as a fan: after 3 s its quieter moments are taken as the noise. */
const TOO_LONG = 300;
const SMOOTHING = 0.9;

interface Open {
  readonly frames: SoundFrame[];
  readonly loud: number[];
  readonly evidence: number[];
  readonly noise: SoundFrame;
  readonly from: number;
  peak: number;
  quiet: number;
}

export class Endpoints {
  private noise: SoundFrame = new Float32Array(0);
  private ratio = new Float32Array(0);
  private readonly past: SoundFrame[] = [];
  private readonly evidence: number[] = [];
  private open: Open | null = null;
  private count = 0;

  /** How loud the noise is now: its power in all bands. */
  get noisePower(): number {
    return this.noise.reduce((sum, power) => sum + power, 0);
  }

  /** Frames so far. */
  get heard(): number {
    return this.count;
  }

  /** Another that knows the noise, and nothing that is open. */
  another(): Endpoints {
    const other = new Endpoints();
    other.noise = Float32Array.from(this.noise);
    other.ratio = Float32Array.from(this.ratio);
    other.count = this.count;
    return other;
  }

  push(frame: SoundFrame): Sounding | null {
    if (this.count === 0) {
      this.noise = Float32Array.from(frame);
      this.ratio = new Float32Array(frame.length);
    }
    this.count++;
    const evidence = this.weigh(frame);
    this.follow(frame, evidence);
    this.past.push(frame);
    this.evidence.push(evidence);
    if (this.past.length > REMEMBERED) {
      this.past.shift();
      this.evidence.shift();
    }
    if (this.open !== null) return this.collect(this.open, frame, evidence);
    return this.count < WARM_UP ? null : this.listen();
  }

  private weigh(frame: SoundFrame): number {
    let sum = 0;
    for (let b = 0; b < frame.length; b++) {
      const after = Math.min(1e3, (frame[b] ?? 0) / (this.noise[b] ?? 1));
      const before = Math.max(0.003, SMOOTHING * (this.ratio[b] ?? 0) + (1 - SMOOTHING) * Math.max(after - 1, 0));
      const gain = before / (1 + before);
      sum += after * gain - Math.log(1 + before);
      this.ratio[b] = Math.min(1e3, gain * gain * after);
    }
    return Math.log1p(Math.max(0, sum / frame.length));
  }

  /** The noise follows quickly in quiet, hardly at all in speech, and only downwards inside a stretch. */
  private follow(frame: SoundFrame, evidence: number): void {
    const idle = evidence < CLOSES ? 0.04 : evidence < OPENS ? 0.015 : 0.003;
    const settling = 1 / Math.min(this.count + 1, 12);
    for (let b = 0; b < frame.length; b++) {
      const away = (frame[b] ?? 0) - (this.noise[b] ?? 0);
      const speed = this.count < WARM_UP ? settling : this.open === null ? idle : away < 0 ? 0.02 : 0;
      this.noise[b] = (this.noise[b] ?? 0) + speed * away;
    }
  }

  private listen(): Sounding | null {
    const strong = this.evidence.slice(-OUT_OF).filter((evidence) => evidence > OPENS).length;
    if (strong < NEEDED || this.isFalling()) return null;
    const first = Math.max(0, this.past.length - OUT_OF - MARGIN - 8);
    const frames = this.past.slice(first);
    const noise = Float32Array.from(this.noise);
    const loud = frames.map((frame) => above(frame, noise));
    this.open = {
      frames,
      loud,
      evidence: this.evidence.slice(first),
      noise,
      from: this.count - frames.length,
      peak: Math.max(...loud),
      quiet: 0,
    };
    return { sign: 'began' };
  }

  /** What was there before rings on: a word rises. */
  private isFalling(): boolean {
    const loud = this.past.slice(-FALL_FRAMES - FALL_MEAN).map((frame) => above(frame, this.noise));
    return meanBefore(loud, loud.length) < meanBefore(loud, loud.length - FALL_FRAMES);
  }

  private collect(open: Open, frame: SoundFrame, evidence: number): Sounding | null {
    open.frames.push(frame);
    open.evidence.push(evidence);
    const loud = above(frame, open.noise);
    open.peak = Math.max(open.peak, loud);
    open.loud.push(loud);
    if (evidence < CLOSES || loud < open.peak * ECHO || ringsOn(open)) open.quiet++;
    else open.quiet = evidence > OPENS ? 0 : open.quiet + 0.5;
    if (open.frames.length % TOO_LONG === 0) this.adopt(open.frames.slice(-TOO_LONG / 2));
    if (open.quiet < HANG) return null;
    this.open = null;
    this.evidence.fill(0);
    return closed(open);
  }

  private adopt(frames: readonly SoundFrame[]): void {
    for (let b = 0; b < this.noise.length; b++) {
      const powers = frames.map((frame) => frame[b] ?? 0).sort((a, c) => a - c);
      // The power of steady noise scatters; its mean lies about half above its lower third.
      this.noise[b] = 1.5 * (powers[Math.floor(powers.length * 0.3)] ?? 0);
    }
  }
}

/** Nobody speaks any more, and what was said is still heard. */
function ringsOn({ loud, peak }: Open): boolean {
  const now = meanBefore(loud, loud.length);
  return now < FALLEN * peak && now < FALLS * meanBefore(loud, loud.length - FALL_FRAMES);
}

const meanBefore = (loud: readonly number[], end: number): number =>
  loud.slice(Math.max(0, end - FALL_MEAN), Math.max(0, end)).reduce((sum, power) => sum + power, 0) / FALL_MEAN;

/** What lies between the first evidence and the last, cut into pieces. */
function closed({ frames, loud, evidence, noise, from }: Open): Sounding {
  const strong = (e: number): boolean => e >= CLOSES;
  const first = evidence.findIndex(strong);
  const last = evidence.findLastIndex(strong) + 1;
  if (first < 0) return { sign: 'slight' };
  const found = piecesOf({ frames, noise, loud, from }, first, last);
  return found === null ? { sign: 'slight' } : { sign: 'ended', ...found, begins: from + first };
}

/** The power clearly above the noise. */
function above(frame: SoundFrame, noise: SoundFrame): number {
  let sum = 0;
  for (let b = 0; b < noise.length; b++) sum += Math.max(0, (frame[b] ?? 0) - 1.5 * (noise[b] ?? 0));
  return sum;
}
