// Whole numbers out of a part of a file that may be cut short or written to mislead: what lies outside is null, never
// read.

export interface Bytes {
  readonly length: number;
  /** Whole numbers of one, two and four bytes, unsigned, counted from the part's own beginning. */
  readonly one: (at: number) => number | null;
  readonly two: (at: number) => number | null;
  readonly four: (at: number) => number | null;
}

/** The bytes from `from` on; `order` says which end of a number comes first. */
export function bytesFrom(file: Uint8Array, from: number, order: 'little' | 'big'): Bytes {
  const length = Math.max(0, file.length - from);
  const one = (at: number) => (at >= 0 && at < length ? (file[from + at] ?? null) : null);
  const pair = (low: number | null, high: number | null, times: number) => (low === null || high === null ? null : high * times + low);
  const two = (at: number) => (order === 'little' ? pair(one(at), one(at + 1), 0x100) : pair(one(at + 1), one(at), 0x100));
  const four = (at: number) => (order === 'little' ? pair(two(at), two(at + 2), 0x10000) : pair(two(at + 2), two(at), 0x10000));
  return { length, one, two, four };
}
