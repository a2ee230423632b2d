// From the edge spread to the share of contrast that is left at a frequency: derivative, window and Fourier transform (ISO 12233:2017, annex D).
// The derivative is the difference over two bins, which falls short by sin x/x with x = 2πf/4, and is corrected by its inverse
// (the same form as P. D. Burns's published programs have); a bin is a mean over places of variance v, which takes about exp(-2π²f²v): sin y/y of a box,
// y = πf/4, to the fourth order, where its pixels fill it evenly. The bins lie along the rows and are narrower along the edge's normal: cos(angle)/4 of a pixel.
import { BINS, type EdgeSpread } from './edgeSpread.ts';

/** The Fourier transform of the windowed line spread at one frequency, as weights of the bins of the edge spread. */
export interface TransferWeights {
  readonly real: Float64Array;
  readonly imaginary: Float64Array;
}

/** Along the edge's normal: `frequency` in cycles a pixel, `lean` the tangent of the angle between edge and axis. */
export function transferWeights(window: Float64Array, frequency: number, lean: number): TransferWeights {
  const turn = 2 * Math.PI * frequency * binWidth(lean);
  const real = new Float64Array(window.length);
  const imaginary = new Float64Array(window.length);
  for (let bin = 1; bin < window.length - 1; bin++) {
    const angle = turn * (bin + 0.5 - window.length / 2);
    const [cosine, sine] = [(window[bin]! * Math.cos(angle)) / 2, (-window[bin]! * Math.sin(angle)) / 2];
    real[bin + 1]! += cosine;
    real[bin - 1]! -= cosine;
    imaginary[bin + 1]! += sine;
    imaginary[bin - 1]! -= sine;
  }
  return { real, imaginary };
}

/** What the transform is multiplied by, for derivative and bins (`apart` of the spread); the frequency lies below two cycles a pixel. */
export function binningCorrection(frequency: number, lean: number, apart: number): number {
  const along = frequency / Math.hypot(1, lean);
  return derivativeCorrection(along) * Math.exp((2 * (Math.PI * along) ** 2 * apart) / BINS ** 2);
}

/** For the difference over two bins; `frequency` in cycles a pixel along the row. */
export const derivativeCorrection = (frequency: number): number => 1 / sinc((2 * frequency) / BINS);

/** Pixels along the edge's normal from one bin to the next. */
export const binWidth = (lean: number): number => 1 / BINS / Math.hypot(1, lean);

const sinc = (x: number): number => (x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x));

/** Share of contrast left at a frequency, of an edge spread under this window. */
export function edgeContrast({ light, apart }: EdgeSpread, window: Float64Array, lean: number): (frequency: number) => number {
  const line = lineSpread(light, window);
  const whole = Math.abs(line.reduce((sum, each) => sum + each, 0));
  return (frequency) => {
    const turn = 2 * Math.PI * frequency * binWidth(lean);
    // The turning vector is turned on from bin to bin: a sine a bin would cost more than all the rest.
    const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
    let [c, s, x, y] = [1, 0, 0, 0];
    for (const each of line) {
      x += each * c;
      y += each * s;
      const turned = c * cosine - s * sine;
      s = s * cosine + c * sine;
      c = turned;
    }
    return (binningCorrection(frequency, lean, apart) * Math.hypot(x, y)) / whole;
  };
}

function lineSpread(light: Float64Array, window: Float64Array): Float64Array {
  return window.map((weight, bin) => (weight === 0 ? 0 : (weight * (light[bin + 1]! - light[bin - 1]!)) / 2));
}
