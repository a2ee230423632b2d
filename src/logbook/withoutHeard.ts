// Everything stored, without the words that were heard: the holds and their verdicts stay. Works on whatever lies on disk,
// of any age, because what a person wants erased must go wherever it was kept.

/** The same, with every heard thing left out and every verdict's own words blank; the very same where there were none. */
export function withoutHeard<Stored>(stored: Stored): Stored {
  return cleared(stored) as Stored;
}

function cleared(value: unknown): unknown {
  if (Array.isArray(value)) {
    const left = value.filter((item) => !isHeard(item));
    const after = left.map(cleared);
    return left.length === value.length && after.every((item, index) => item === left[index]) ? value : after;
  }
  if (!isObject(value)) return value;
  const after = Object.entries(value).map(([key, item]): [string, unknown] => [key, key === 'heard' && typeof item === 'string' ? null : cleared(item)]);
  return after.every(([key, item]) => item === value[key]) ? value : Object.fromEntries(after);
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const isHeard = (item: unknown): boolean => isObject(item) && item['did'] === 'heard';
