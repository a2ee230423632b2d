// The shape of an edge: the logistic form of the normal ogive (Birnbaum 1968, in Lord & Novick, Statistical
// Theories of Mental Test Scores, ch. 17: D = 1.702 keeps it within 0.01 of the normal distribution function).

/** P(X <= x) of a standard normal, to within 0.01; any real x, result in (0, 1). */
export const ogive = (x: number): number => 1 / (1 + Math.exp(-1.702 * x));
