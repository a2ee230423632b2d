// French as it is written here: a comma before decimals, and no thin space lost.
import { writing } from '../writing.ts';

export const write = writing('fr-FR');
