// A distance as it stands in a field for metres.
import type { Millimetres } from '../../units.ts';

/** 4250 mm is "4.25": to the centimetre below ten metres, to the decimetre above. */
export const metresTyped = (length: Millimetres): string => String(Number((length / 1000).toFixed(length < 10_000 ? 2 : 1)));
