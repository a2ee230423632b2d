// A whole result on one line of a snapshot, its numbers to seven digits: a net over many inputs stays short enough to be read.
import { sevenDigits } from './sevenDigits.ts';

export const oneLine = (value: unknown): string => JSON.stringify(sevenDigits(value)) ?? 'undefined';
