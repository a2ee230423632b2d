// What a room works out from seeded stuff, written so that a snapshot can hold it: a change that no other test would notice is noticed
// by a number that comes out otherwise. It says only that nothing changed; that the numbers are right is held elsewhere.
// Who means to change them looks at what changed and keeps the new ones: `npx vitest run FILE -u`.
const DIGITS = 7;
/** Below this a number is what is left of nought. */
const NOUGHT = 1e-9;

/** Numbers to seven digits, as processors and engines differ in the sixteenth; rows of numbers on one line. */
export function sevenDigits(value: unknown): unknown {
  if (typeof value === 'number') return short(value);
  if (Array.isArray(value) || ArrayBuffer.isView(value)) {
    const row = Array.from(value as ArrayLike<unknown>);
    return row.length > 0 && row.every((each) => typeof each === 'number') ? row.map(short).join(' ') : row.map(sevenDigits);
  }
  if (value instanceof Map) return [...value].map(sevenDigits);
  if (value instanceof Set) return [...value].map(sevenDigits);
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, sevenDigits(each)]));
  return value;
}

const short = (value: number): string => (Math.abs(value) < NOUGHT ? '0' : String(Number(value.toPrecision(DIGITS))));
