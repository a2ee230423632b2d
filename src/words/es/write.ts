// Spanish as it is written here: the decimal comma, and a space before the per cent sign.
import { writing } from '../writing.ts';

export const write = writing('es-ES');
