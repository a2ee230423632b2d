// What the digits that a person typed can mean. Of a comma and a point the later one begins the decimals, and a point by itself
// always does, unless no such number can be meant. A comma before exactly three digits may part thousands or begin the decimals:
// whoever asks must tell. Blanks part thousands and nothing else. Full-width digits and signs, as a Japanese keyboard gives them, are digits
// and signs.

/** In half-width characters, with every minus the same: a keyboard for kana gives a long vowel in its place. */
export const halfWidth = (typed: string): string =>
  typed
    .normalize('NFKC')
    .trim()
    .replace(/^[\u2212\u30fc]/, '-');

/** The sign that stands before a number, and the rest. */
export function signed(typed: string): { readonly sign: 1 | -1; readonly digits: string } {
  const [, sign = '', digits = ''] = /^([-+]?)(.*)$/s.exec(halfWidth(typed)) ?? [];
  return { sign: sign === '-' ? -1 : 1, digits };
}

/** Each number without a sign that the text can mean, the one with decimals first; none where it is no number. */
export function numbersIn(written: string): readonly number[] {
  const digits = written.replace(/^\d{1,3}(?:\s\d{3})+(?!\d)/, (grouped) => grouped.replaceAll(/\s/g, ''));
  if (/^\d+$/.test(digits)) return [Number(digits)];
  if (/^[1-9]\d{0,2}(,\d{3}){2,}$/.test(digits) || /^[1-9]\d{0,2}(,\d{3})+\.\d+$/.test(digits)) return [Number(digits.replaceAll(',', ''))];
  if (/^[1-9]\d{0,2}(\.\d{3}){2,}$/.test(digits)) return [Number(digits.replaceAll('.', ''))];
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(digits)) return [Number(digits.replaceAll('.', '').replace(',', '.'))];
  if (!/^(\d+[.,]\d*|[.,]\d+)$/.test(digits)) return [];
  const decimal = Number(digits.replace(',', '.'));
  return /^[1-9]\d{0,2},\d{3}$/.test(digits) ? [decimal, Number(digits.replace(',', ''))] : [decimal];
}

/** What "1.250" means where its point parts thousands; null where it cannot. */
export const thousandsPointed = (written: string): number | null => (/^[1-9]\d{0,2}\.\d{3}$/.test(written) ? Number(written.replace('.', '')) : null);
