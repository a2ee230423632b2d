// A sentence as it is handed to a voice: the blanks that keep a number and its unit, or a mark and its word, in one line are for the eye, and not
// every voice takes them for blanks.

export const asSpoken = (sentence: string): string => sentence.replaceAll(/[\u00a0\u202f]/gu, ' ');
