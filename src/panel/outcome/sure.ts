// How sure a value is, in words: less than a sweep asks for says so.
import { SURE } from '../../sweep/end/care.ts';
import { words } from '../../words/catalogue.ts';

export const sureInWords = (within: number): string => (within < SURE ? words('sweep').notYetSure(within) : words('sweep').sure(within));
