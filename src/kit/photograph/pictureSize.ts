// How large the picture in a file is, told by its first bytes: what is too large to be decoded is refused before it is tried.
// PNG: W3C PNG specification, 11.2.2 (IHDR). WebP: RFC 9649, 2.5 to 2.7. JPEG: jpeg.ts.
import { bytesFrom, type Bytes } from './bytes.ts';
import { frameInJpeg, isJpeg, type PictureSize } from './jpeg.ts';

/** Null where the kind of file is another one, or its size is out of reach. */
export function pictureSizeOf(file: Uint8Array): PictureSize | null {
  if (isJpeg(file)) return frameInJpeg(file);
  const frame = frameInPng(bytesFrom(file, 0, 'big')) ?? frameInWebp(bytesFrom(file, 0, 'little'));
  return frame !== null && frame.width > 0 && frame.height > 0 ? frame : null;
}

function frameInPng(bytes: Bytes): PictureSize | null {
  if (bytes.four(0) !== 0x89504e47 || bytes.four(12) !== 0x49484452) return null;
  const [width, height] = [bytes.four(16), bytes.four(20)];
  return width === null || height === null ? null : { width, height };
}

/** "RIFF", "WEBP", and the three kinds of first chunk: "VP8 ", "VP8L" and "VP8X". */
function frameInWebp(bytes: Bytes): PictureSize | null {
  if (bytes.four(0) !== 0x46464952 || bytes.four(8) !== 0x50424557) return null;
  const kind = bytes.four(12);
  if (kind === 0x20385056) return both(bytes.two(26), bytes.two(28), (width, height) => ({ width: width & 0x3fff, height: height & 0x3fff }));
  if (kind === 0x4c385056) {
    const packed = bytes.four(21);
    return packed === null ? null : { width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 };
  }
  if (kind !== 0x58385056) return null;
  return both(three(bytes, 24), three(bytes, 27), (width, height) => ({ width: width + 1, height: height + 1 }));
}

function three(bytes: Bytes, at: number): number | null {
  const [low, high] = [bytes.two(at), bytes.one(at + 2)];
  return low === null || high === null ? null : high * 0x10000 + low;
}

const both = (width: number | null, height: number | null, frame: (width: number, height: number) => PictureSize): PictureSize | null =>
  width === null || height === null ? null : frame(width, height);
