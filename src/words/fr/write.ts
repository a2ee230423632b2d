// French as it is written here: a comma before decimals, no thin space lost, and the first of a month as an ordinal: « 1er mars ».
import { writing, type Write } from '../writing.ts';

const plain = writing('fr-FR');

const ordinal = (date: string): string => date.replace(/^1(?=\s)/u, '1er');

export const write: Write = {
  ...plain,
  day: (when) => ordinal(plain.day(when)),
  dayAndTime: (when) => ordinal(plain.dayAndTime(when)),
  dayAndSecond: (when) => ordinal(plain.dayAndSecond(when)),
};
