// Japanese as it is written here: half-width figures, and no words between numbers and their counters.
import { writing } from '../writing.ts';

export const write = writing('ja-JP');
