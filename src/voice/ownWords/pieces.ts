// Cuts sound that went on without quiet into its pieces: a word said right after a shutter, a key or a cough stands in
// one stretch with it, since the room still rings. Pieces are told apart by how the loudness falls and rises again.
import type { SoundFrame } from './bands.ts';

/** A stretch of sound that may be a word, with some of the noise on both sides. */
export interface Stretch {
  readonly frames: readonly SoundFrame[];
  /** The power in each band when nobody speaks. */
  readonly noise: SoundFrame;
  /** Frame numbers since the ear opened. */
  readonly begins: number;
  readonly ends: number;
}

export interface SoundPiece {
  readonly stretch: Stretch;
  /** Longer than any word. */
  readonly long: boolean;
  /** The stretch without its first burst, where a pause follows that; the burst itself. */
  readonly later: { readonly stretch: Stretch; readonly before: Stretch } | null;
}

/** Frames that were open, the power of each clearly above the noise, and the number of the first. */
export interface Unbroken {
  readonly frames: readonly SoundFrame[];
  readonly noise: SoundFrame;
  readonly loud: readonly number[];
  readonly from: number;
}

/** Noise kept on both sides: a weak sound drowned in it is still in there. */
export const MARGIN = 12;
const SHORTEST = 9;
const LONGEST = 190;
/** A closed mouth inside a word, and how far under the peak still belongs to it. */
const GAP = 18;
const FAINT = 0.003;
/** A piece rises by 10 dB over what lies between it and a louder one, which otherwise only rings on. */
const RISES = 10;
/** Frames of a pause inside a piece that may be no closed mouth: those of plosives are shorter. Common practice, no source. */
const PAUSE = 10;

type Span = readonly [begin: number, end: number];

/** The pieces between two frames, in order; null when all are too short for a word. */
export function piecesOf(opened: Unbroken, first: number, last: number): { readonly pieces: readonly SoundPiece[]; readonly loudest: SoundPiece } | null {
  const smooth = opened.loud.map((power, t) => (power + (opened.loud[t - 1] ?? power) + (opened.loud[t + 1] ?? power)) / 3);
  const spans = spansIn(smooth, opened.loud, [first, last]);
  const loudest = spans[0];
  if (loudest === undefined) return null;
  const pieces = new Map(spans.map((span) => [span, pieceOf(opened, smooth, span)]));
  return { pieces: [...pieces.values()].sort((a, b) => a.stretch.begins - b.stretch.begins), loudest: pieces.get(loudest)! };
}

/** The burst around the loudest moment, then those left and right of it. */
function spansIn(smooth: readonly number[], loud: readonly number[], [first, last]: Span): Span[] {
  if (last - first < SHORTEST) return [];
  const top = loudestIn(smooth, [first, last]);
  const [begin, end] = around(loud, smooth[top]!, top, [first, last]);
  const rises = (side: Span, towards: number): boolean => {
    if (side[1] - side[0] < SHORTEST) return false;
    const other = loudestIn(smooth, side);
    const between = smooth.slice(Math.min(other, towards), Math.max(other, towards) + 1);
    return smooth[other]! >= RISES * Math.min(...between);
  };
  // One frame of the smoothed loudness on each side is still the burst's.
  const left: Span = [first, begin - 1];
  const right: Span = [end + 1, last];
  return [
    ...(end - begin < SHORTEST ? [] : [[begin, end] as const]),
    ...(rises(left, begin) ? spansIn(smooth, loud, left) : []),
    ...(rises(right, end) ? spansIn(smooth, loud, right) : []),
  ];
}

function loudestIn(smooth: readonly number[], [from, to]: Span): number {
  let top = from;
  for (let t = from; t < to; t++) if (smooth[t]! > smooth[top]!) top = t;
  return top;
}

/** Gaps that a closed mouth leaves are bridged, fainter sounds beyond left out. */
function around(loud: readonly number[], peak: number, top: number, [first, last]: Span): Span {
  const reach = (direction: 1 | -1): number => {
    let edge = top;
    for (let t = top; t >= first && t < last && Math.abs(t - edge) <= GAP; t += direction) {
      if (loud[t]! > peak * FAINT) edge = t;
    }
    return edge;
  };
  return [reach(-1), reach(1) + 1];
}

function pieceOf(opened: Unbroken, smooth: readonly number[], span: Span): SoundPiece {
  const stretch = stretchOf(opened, span);
  return { stretch, long: stretch.ends - stretch.begins > LONGEST, later: laterIn(opened, smooth, span) };
}

function laterIn(opened: Unbroken, smooth: readonly number[], [begin, end]: Span): SoundPiece['later'] {
  const pause = pauseIn(smooth, [begin, end]);
  if (pause === null) return null;
  const rest: Span = [pause[1], end];
  const top = loudestIn(smooth, rest);
  const span = around(opened.loud, smooth[top]!, top, rest);
  return span[1] - span[0] < SHORTEST ? null : { stretch: stretchOf(opened, span), before: stretchOf(opened, [begin, pause[0]]) };
}

/** The first run of frames that lies 10 dB under what is before and after it. */
function pauseIn(smooth: readonly number[], [begin, end]: Span): Span | null {
  const after = smooth.slice(0, end);
  for (let t = end - 2; t >= begin; t--) after[t] = Math.max(after[t]!, after[t + 1]!);
  let before = 0;
  let run = 0;
  for (let t = begin; t < end; t++) {
    before = Math.max(before, smooth[t]!);
    if (smooth[t]! * RISES < Math.min(before, after[t]!)) run++;
    else if (run >= PAUSE) return [t - run, t];
    else run = 0;
  }
  return null;
}

function stretchOf({ frames, noise, from }: Unbroken, [begin, end]: Span): Stretch {
  const begins = Math.max(0, begin - MARGIN);
  const ends = Math.min(frames.length, end + MARGIN);
  return { frames: frames.slice(begins, ends), noise, begins: from + begins, ends: from + ends };
}
