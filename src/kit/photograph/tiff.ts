// The tagged fields of a TIFF header, as photographs carry it (TIFF 6.0, section 2; CIPA DC-008, 4.6.2): only the first
// directory and the Exif directory it points to, only as far as the bytes at hand go. Nothing is followed twice.
import { bytesFrom, type Bytes } from './bytes.ts';
import { ASCII, directoryAt, LONG, byteOrderOf, RATIONAL, UTF8, wholeNumbers, type TaggedField } from './directory.ts';
import { TAG } from './tags.ts';

export interface Fields {
  /** Text up to its first zero; null where the tag is missing, of another kind, or out of reach. */
  readonly text: (tag: number) => string | null;
  /** Fractions as written; an empty list where there are none in reach. */
  readonly fractions: (tag: number) => readonly Fraction[];
  /** The first whole number of the field; null where the tag is missing, of another kind, or out of reach. */
  readonly whole: (tag: number) => number | null;
}

export interface Fraction {
  readonly over: number;
  readonly under: number;
}

const MOST_TEXT = 200;
const MOST_FRACTIONS = 4;

/** Reads the header that begins at `from`; null when none does, or when its directory is out of reach. */
export function readTiff(file: Uint8Array, from: number): Fields | null {
  const order = byteOrderOf(file, from);
  if (order === null) return null;
  const bytes = bytesFrom(file, from, order);
  const first = directoryAt(bytes, bytes.four(4))?.fields;
  if (!first) return null;
  const pointer = first.get(TAG.exifPointer);
  const exif = pointer?.type === LONG ? directoryAt(bytes, bytes.four(pointer.at))?.fields : undefined;
  const field = (tag: number) => exif?.get(tag) ?? first.get(tag);
  return {
    text: (tag) => textOf(bytes, field(tag)),
    fractions: (tag) => fractionsOf(bytes, field(tag)),
    whole: (tag) => wholeNumbers(bytes, field(tag), 1)[0] ?? null,
  };
}

function textOf(bytes: Bytes, field: TaggedField | undefined): string | null {
  if (!field || (field.type !== ASCII && field.type !== UTF8)) return null;
  const read: number[] = [];
  for (let index = 0; index < Math.min(field.count, MOST_TEXT); index++) {
    const byte = bytes.one(field.at + index);
    if (byte === null || byte === 0) break;
    read.push(byte);
  }
  const text = decoded(read)
    .replace(/[\p{C}\p{Z}]+/gu, ' ')
    .trim();
  return text === '' ? null : text;
}

/** UTF-8 where it is that, else each byte as the sign of its number. */
function decoded(bytes: readonly number[]): string {
  try {
    return decodeURIComponent(bytes.map((byte) => `%${byte.toString(16).padStart(2, '0')}`).join(''));
  } catch {
    return String.fromCharCode(...bytes);
  }
}

function fractionsOf(bytes: Bytes, field: TaggedField | undefined): Fraction[] {
  if (field?.type !== RATIONAL) return [];
  const read: Fraction[] = [];
  for (let index = 0; index < Math.min(field.count, MOST_FRACTIONS); index++) {
    const over = bytes.four(field.at + 8 * index);
    const under = bytes.four(field.at + 8 * index + 4);
    if (over === null || under === null) break;
    read.push({ over, under });
  }
  return read;
}
