// What a function gives, to seven digits, as a snapshot keeps it; where it throws, that it does.
import { orThrown } from './orThrown.ts';
import { sevenDigits } from './sevenDigits.ts';

export const kept = (work: () => unknown): unknown => sevenDigits(orThrown(work));
