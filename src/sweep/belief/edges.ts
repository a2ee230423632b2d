// How softly the light gives way at the two ends of a band. The ends may differ; mostly they do not. Common practice and
// simulation, no source.

/** Softness in steps, the standard deviation of the light's wavering, and how often an edge is so soft. */
const SOFTNESS = [
  { steps: 0.3, share: 0.38 },
  { steps: 0.6, share: 0.36 },
  { steps: 1.05, share: 0.18 },
  { steps: 1.7, share: 0.08 },
];
/** Share of bands whose two ends are equally soft. */
const ALIKE = 0.8;
const ALIKE_IF_EVEN = 0.5;

/** Softness of the low and of the high end, as places in `SOFT`, with the share of such bands; `even`: were no softness likelier than another. */
export interface EdgeKind {
  readonly low: number;
  readonly high: number;
  readonly share: number;
  readonly even: number;
}

export const SOFT: readonly number[] = SOFTNESS.map(({ steps }) => steps);

export const EDGES: readonly EdgeKind[] = SOFTNESS.flatMap((one, low) =>
  SOFTNESS.map((other, high) => ({
    low,
    high,
    share: (1 - ALIKE) * one.share * other.share + (low === high ? ALIKE * one.share : 0),
    even: ((1 - ALIKE_IF_EVEN) / SOFTNESS.length + (low === high ? ALIKE_IF_EVEN : 0)) / SOFTNESS.length,
  })),
);
