// What a converter does to a correction: why a value without it says little about the value with it. A defocus of the
// lens is lengthened by the factor squared, and a step, in proportion to the f-number, by the factor; an error of the
// body keeps its length (longitudinal magnification, from memory).

export interface ThroughConverter {
  /** The effective f-number of a lens. */
  fNumber(widest: number): number;
  /** Times as long a defocus of the lens becomes. */
  readonly length: number;
  /** Times as many steps a fixed error of the lens, and of the body, becomes. */
  readonly lensSteps: number;
  readonly bodySteps: number;
}

export const throughConverter = (factor: number): ThroughConverter => ({
  fNumber: (widest) => widest * factor,
  length: factor ** 2,
  lensSteps: factor,
  bodySteps: 1 / factor,
});
