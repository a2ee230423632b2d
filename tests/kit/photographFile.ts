// Photographs for the tests, made from nothing: a TIFF header with any fields, alone or inside a JPEG, either byte
// order.

type Value = { readonly text: string } | { readonly short: number } | { readonly fractions: readonly (readonly [number, number])[] };

export interface Tagged {
  readonly tag: number;
  readonly value: Value;
}

export interface FileParts {
  readonly order: 'little' | 'big';
  /** Fields of the first directory, and of the Exif directory. */
  readonly first: readonly Tagged[];
  readonly exif: readonly Tagged[];
}

const EXIF_POINTER = 0x8769;

/** The bytes of a TIFF header with these fields. */
export function tiffFile({ order, first, exif }: FileParts): Uint8Array {
  const little = order === 'little';
  const bytes: number[] = [];
  const two = (value: number) => bytes.push(...(little ? [value & 255, value >> 8] : [value >> 8, value & 255]));
  const four = (value: number) => {
    const parts = [value & 255, (value >>> 8) & 255, (value >>> 16) & 255, value >>> 24];
    bytes.push(...(little ? parts : parts.toReversed()));
  };
  const size = (fields: number) => 2 + 12 * fields + 4;
  const exifAt = 8 + size(first.length + 1);
  let free = exifAt + size(exif.length);
  const spare: Value[] = [];
  const entry = ({ tag, value }: Tagged) => {
    const length = lengthOf(value);
    two(tag);
    two('text' in value ? 2 : 'short' in value ? 3 : 5);
    four('fractions' in value ? value.fractions.length : 'text' in value ? length : 1);
    if ('short' in value) {
      two(value.short);
      two(0);
    } else if ('text' in value && length <= 4) bytes.push(...textBytes(value.text), ...Array<number>(4 - length).fill(0));
    else {
      four(free);
      spare.push(value);
      free += length + (length % 2);
    }
  };
  bytes.push(...(little ? [0x49, 0x49] : [0x4d, 0x4d]));
  two(42);
  four(8);
  two(first.length + 1);
  for (const field of first) entry(field);
  two(EXIF_POINTER);
  two(4);
  four(1);
  four(exifAt);
  four(0);
  two(exif.length);
  for (const field of exif) entry(field);
  four(0);
  for (const value of spare) {
    if ('text' in value) bytes.push(...textBytes(value.text));
    if ('fractions' in value) value.fractions.flat().forEach(four);
    if (lengthOf(value) % 2 === 1) bytes.push(0);
  }
  return Uint8Array.from(bytes);
}

/** A JPEG with nothing but a segment of another kind, the camera data, and the begin of a scan. */
export function jpegFile(tiff: Uint8Array): Uint8Array {
  const segment = (marker: number, content: readonly number[]) => [0xff, marker, (content.length + 2) >> 8, (content.length + 2) & 255, ...content];
  const exif = segment(0xe1, [0x45, 0x78, 0x69, 0x66, 0, 0, ...tiff]);
  const jfif = segment(0xe0, [0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 1, 0, 1, 0, 0]);
  return Uint8Array.from([0xff, 0xd8, ...jfif, ...exif, ...segment(0xda, [0, 0, 0]), 0xff, 0xd9]);
}

/** What the invented camera writes. */
export const VELDE: FileParts = {
  order: 'big',
  first: [
    { tag: 0x0110, value: { text: 'Velde M1' } },
    { tag: 0x0112, value: { short: 1 } },
    { tag: 0x0132, value: { text: '2026:03:05 00:00:00' } },
  ],
  exif: [
    { tag: 0x829d, value: { fractions: [[18, 10]] } },
    { tag: 0x9003, value: { text: '2026:03:04 17:06:07' } },
    { tag: 0x9205, value: { fractions: [[1696, 1000]] } },
    { tag: 0x9206, value: { fractions: [[425, 100]] } },
    { tag: 0x920a, value: { fractions: [[85, 1]] } },
    { tag: 0xa431, value: { text: '004711' } },
    {
      tag: 0xa432,
      value: {
        fractions: [
          [85, 1],
          [85, 1],
          [18, 10],
          [18, 10],
        ],
      },
    },
    { tag: 0xa434, value: { text: 'Orrin 85mm f/1.8' } },
    { tag: 0xa435, value: { text: 'A12' } },
  ],
};

/** The same with some Exif fields exchanged or added. */
export const veldeWith = (...changed: readonly Tagged[]): FileParts => ({
  ...VELDE,
  exif: [...VELDE.exif.filter(({ tag }) => changed.every((field) => field.tag !== tag)), ...changed],
});

const textBytes = (text: string): number[] => [...new TextEncoder().encode(text), 0];

function lengthOf(value: Value): number {
  if ('text' in value) return textBytes(value.text).length;
  return 'short' in value ? 2 : value.fractions.length * 8;
}
