// Reads the PNGs that this project makes, pixel by pixel (W3C PNG specification: 8 bits, colour types 2 and 6, not interlaced, the five filters).
import { inflateSync } from 'node:zlib';

export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly hasAlpha: boolean;
  /** Red, green, blue and, where there is one, alpha of a pixel. */
  readonly at: (x: number, y: number) => readonly number[];
}

export function pngPixels(file: Uint8Array): Pixels {
  const bytes = Buffer.from(file);
  const width = bytes.readUInt32BE(16);
  const height = bytes.readUInt32BE(20);
  const [depth, kind, , , interlaced] = bytes.subarray(24, 29);
  if (depth !== 8 || (kind !== 2 && kind !== 6) || interlaced !== 0) throw new Error(`A PNG of depth ${depth} and colour type ${kind} is not read here.`);
  const channels = kind === 6 ? 4 : 3;
  const rows = unfiltered(inflateSync(Buffer.concat(partsOf(bytes, 'IDAT'))), width * channels, channels);
  return { width, height, hasAlpha: kind === 6, at: (x, y) => [...(rows[y]?.subarray(x * channels, (x + 1) * channels) ?? [])] };
}

function partsOf(bytes: Buffer, wanted: string): Buffer[] {
  const found: Buffer[] = [];
  for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at)) {
    if (bytes.toString('latin1', at + 4, at + 8) === wanted) found.push(bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at)));
  }
  return found;
}

function unfiltered(filtered: Buffer, length: number, channels: number): Buffer[] {
  let above: Buffer = Buffer.alloc(length);
  return Array.from({ length: filtered.length / (length + 1) }, (_, y) => {
    const filter = filtered[y * (length + 1)] ?? 0;
    const row = Buffer.from(filtered.subarray(y * (length + 1) + 1, (y + 1) * (length + 1)));
    for (let x = 0; x < length; x++) {
      const [left, up, corner] = [x < channels ? 0 : (row[x - channels] ?? 0), above[x] ?? 0, x < channels ? 0 : (above[x - channels] ?? 0)];
      row[x] = (row[x] ?? 0) + ([0, left, up, (left + up) >> 1, nearest(left, up, corner)][filter] ?? 0);
    }
    above = row;
    return row;
  });
}

/** Paeth's choice. */
function nearest(left: number, up: number, corner: number): number {
  const [a, b, c] = [Math.abs(up - corner), Math.abs(left - corner), Math.abs(left + up - 2 * corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}
