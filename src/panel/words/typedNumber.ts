// Numbers as people type them.

/** What a person typed as a number; the decimal comma, a true minus and spaces are welcome. Not a number: NaN. */
export function typedNumber(text: string): number {
  const cleaned = text.trim().replace(/\u2212/g, '-').replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(cleaned) ? Number(cleaned) : Number.NaN;
}
