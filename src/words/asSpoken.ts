// A sentence as it is handed to a voice, the panel's own or that of a screen reader: what keeps a number and its unit in one line, or says where a
// long word may go on in the next, is for the eye, and not every voice passes over it.

export const asSpoken = (sentence: string): string => sentence.replaceAll(/[\u00a0\u202f]/gu, ' ').replaceAll('\u00ad', '');
