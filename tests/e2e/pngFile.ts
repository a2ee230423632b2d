// A PNG of pixels that the tests worked out themselves (W3C PNG specification: IHDR, one IDAT of unfiltered rows, IEND).
import { crc32, deflateSync } from 'node:zlib';

export function pngFile({ width, height, rgba }: { readonly width: number; readonly height: number; readonly rgba: Uint8ClampedArray }): Buffer {
  const rows = Buffer.alloc((4 * width + 1) * height);
  for (let y = 0; y < height; y++) rows.set(rgba.subarray(4 * width * y, 4 * width * (y + 1)), (4 * width + 1) * y + 1);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 6], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows, { level: 1 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(kind: string, content: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), content]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}
