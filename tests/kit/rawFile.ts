// Raw files for the tests, made from nothing: directories in a chain and below the first, each with the size it claims and a
// JPEG that is no more than its frame.

export interface RawPart {
  readonly width: number;
  readonly height: number;
  /** How the directory points to its JPEG: by the fields for a JPEG, as one strip, or as two strips. */
  readonly by: 'jpeg' | 'strip' | 'two strips' | 'nothing';
  /** The size of the JPEG, where it is another one; a lossless frame is one that no browser decodes. */
  readonly jpeg?: { readonly width: number; readonly height: number; readonly lossless?: true };
}

export interface RawParts {
  readonly order: 'little' | 'big';
  readonly chain: readonly RawPart[];
  /** Below the first of the chain. */
  readonly below: readonly RawPart[];
  readonly orientation?: number;
}

const LONG = 4;

export function rawFile({ order, chain, below, orientation = 1 }: RawParts): Uint8Array {
  const parts = [...chain, ...below];
  const size = 2 + 12 * 8 + 4;
  const listAt = 8 + size * parts.length;
  const pictures = parts.map((part) => frameOnly(part.jpeg ?? part));
  const pictureAt = (index: number) => listAt + 4 * below.length + pictures.slice(0, index).reduce((sum, { length }) => sum + length, 0);
  const file = new Uint8Array(pictureAt(parts.length));
  const view = new DataView(file.buffer);
  const little = order === 'little';
  file.set(little ? [0x49, 0x49] : [0x4d, 0x4d]);
  view.setUint16(2, 42, little);
  view.setUint32(4, 8, little);
  parts.forEach((part, index) => {
    const at = 8 + size * index;
    const from = pictureAt(index);
    const length = pictures[index]!.length;
    const fields: (readonly [number, number, number])[] = [
      [0x0100, 1, part.width],
      [0x0101, 1, part.height],
      ...(index === 0 ? [[0x0112, 1, orientation] as const] : []),
      ...(part.by === 'strip'
        ? ([
            [0x0111, 1, from],
            [0x0117, 1, length],
          ] as const)
        : []),
      ...(part.by === 'two strips'
        ? ([
            [0x0111, 2, listAt],
            [0x0117, 2, listAt],
          ] as const)
        : []),
      ...(part.by === 'jpeg'
        ? ([
            [0x0201, 1, from],
            [0x0202, 1, length],
          ] as const)
        : []),
      ...(index === 0 && below.length > 0 ? [[0x014a, below.length, below.length === 1 ? 8 + size * chain.length : listAt] as const] : []),
    ];
    view.setUint16(at, fields.length, little);
    fields.forEach(([tag, count, value], place) => {
      view.setUint16(at + 2 + 12 * place, tag, little);
      view.setUint16(at + 4 + 12 * place, LONG, little);
      view.setUint32(at + 6 + 12 * place, count, little);
      view.setUint32(at + 10 + 12 * place, value, little);
    });
    const isLast = index === chain.length - 1 || index >= chain.length;
    view.setUint32(at + 2 + 12 * fields.length, isLast ? 0 : at + size, little);
    file.set(pictures[index]!, from);
  });
  below.forEach((_, index) => view.setUint32(listAt + 4 * index, 8 + size * (chain.length + index), little));
  return file;
}

/** Nothing but the frame, and the begin of a scan. */
export function frameOnly({ width, height, lossless }: NonNullable<RawPart['jpeg']>): Uint8Array {
  const size = [height >> 8, height & 255, width >> 8, width & 255];
  return Uint8Array.from([0xff, 0xd8, 0xff, lossless ? 0xc3 : 0xc0, 0, 11, 8, ...size, 1, 1, 0x11, 0, 0xff, 0xda, 0, 2, 0xff, 0xd9]);
}
