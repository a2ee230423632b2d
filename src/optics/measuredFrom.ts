// Where the tape measure was put: the two ways differ by the length of the lens and are never mixed.

export const MEASURED_FROM = ['film plane', 'front of lens'] as const;
export type MeasuredFrom = (typeof MEASURED_FROM)[number];
