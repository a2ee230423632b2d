// One directory of tagged fields, as TIFF-based files carry them (TIFF 6.0, section 2), read only as far as the bytes at hand go.
// Where a field's value lies is told; what it means is for those who know its tag.
import { bytesFrom, type Bytes } from './bytes.ts';

export interface TaggedField {
  readonly type: number;
  readonly count: number;
  /** Where its value begins, counted as the bytes are. */
  readonly at: number;
}

export interface Directory {
  readonly fields: ReadonlyMap<number, TaggedField>;
  /** Where the next directory begins; null where this one is the last or is cut short. */
  readonly next: number | null;
}

export const ASCII = 2;
const SHORT = 3;
export const LONG = 4;
export const RATIONAL = 5;
/** A pointer to a directory (TIFF Technical Note 1). */
const DIRECTORY = 13;
export const UTF8 = 129;
const SIZE_OF = new Map([
  [ASCII, 1],
  [SHORT, 2],
  [LONG, 4],
  [RATIONAL, 8],
  [DIRECTORY, 4],
  [UTF8, 1],
]);
/** More than any camera writes. */
const MOST_FIELDS = 1000;

/** Which end of a number comes first in the file that begins at `from`; null where no such file does. */
export function byteOrderOf(file: Uint8Array, from: number): 'little' | 'big' | null {
  const order = bytesFrom(file, from, 'big').two(0);
  return order === 0x4949 ? 'little' : order === 0x4d4d ? 'big' : null;
}

/** The directory at this place; null when it is out of reach. */
export function directoryAt(bytes: Bytes, at: number | null): Directory | null {
  const count = at === null ? null : bytes.two(at);
  if (at === null || count === null) return null;
  const fields = new Map<number, TaggedField>();
  for (let index = 0; index < Math.min(count, MOST_FIELDS); index++) {
    const entry = at + 2 + 12 * index;
    const [tag, type, many] = [bytes.two(entry), bytes.two(entry + 2), bytes.four(entry + 4)];
    if (tag === null || type === null || many === null) break;
    const size = SIZE_OF.get(type);
    if (size === undefined || fields.has(tag)) continue;
    const place = size * many <= 4 ? entry + 8 : bytes.four(entry + 8);
    if (place !== null) fields.set(tag, { type, count: many, at: place });
  }
  const next = count > MOST_FIELDS ? null : bytes.four(at + 2 + 12 * count);
  return { fields, next: next === 0 ? null : next };
}

/** The whole numbers of a field, at most `most` of them; an empty list where they are missing, of another kind or out of reach. */
export function wholeNumbers(bytes: Bytes, field: TaggedField | undefined, most: number): readonly number[] {
  const size = field?.type === SHORT ? 2 : field?.type === LONG || field?.type === DIRECTORY ? 4 : 0;
  if (!field || size === 0) return [];
  const read: number[] = [];
  for (let index = 0; index < Math.min(field.count, most); index++) {
    const value = size === 2 ? bytes.two(field.at + 2 * index) : bytes.four(field.at + 4 * index);
    if (value === null) break;
    read.push(value);
  }
  return read;
}
