// English as it is written here: the day before the month, and the number's words between.
import { writing } from '../writing.ts';

export const write = writing('en-GB');
