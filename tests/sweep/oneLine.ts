// A thing with names in it on one line of a snapshot, its numbers to seven digits.
import { sevenDigits } from '../kept/sevenDigits.ts';

export const oneLine = (value: unknown): string => JSON.stringify(sevenDigits(value)).replaceAll('"', '');
