// What is done to written words of any language before they are compared.

/** Of a language that needs no parting: its words are parted by blanks already. */
export const asIs = (text: string): string => text;

/** Letters that are composed of another and a mark above or below it, in two. */
const ACCENTS = /[\u0300-\u036f]/g;

/** Letters and marks stay apart where no accent was taken away: whoever compares other scripts composes them again. */
export const withoutAccents = (text: string): string => text.normalize('NFKD').replace(ACCENTS, '');
