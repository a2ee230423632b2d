// German as it is written here.
import { writing } from '../writing.ts';

export const write = writing('de-DE');
