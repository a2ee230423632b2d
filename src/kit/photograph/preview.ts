// The full-size JPEG inside a TIFF-based raw file, where the camera put one: the largest that its directories point to, by
// JPEGInterchangeFormat or as a single strip (TIFF 6.0, section 22 and section 3), in the chain of directories and those
// below them (TIFF Technical Note 1). Nothing is followed twice, and nothing outside the file is read.
import { failed, got, type Result } from '../../result.ts';
import { bytesFrom, type Bytes } from './bytes.ts';
import { directoryAt, byteOrderOf, wholeNumbers, type Directory } from './directory.ts';
import { frameInJpeg, type PictureSize } from './jpeg.ts';
import { TAG } from './tags.ts';

/** Bytes of the file, from its beginning. */
export interface RawPicture {
  readonly from: number;
  readonly length: number;
  readonly frame: PictureSize;
  /** How the camera was held, 1 to 8 (CIPA DC-008, Orientation); 1 where the file does not say. */
  readonly orientation: number;
}

export type PreviewFault = 'no raw file' | 'no picture inside' | 'only a small picture inside';

/** More than any camera writes, in the chain and below it. */
const MOST_DIRECTORIES = 64;
const MOST_BELOW = 16;
/** Sensors have a border that the picture leaves out: this much of the larger side is the whole (common practice, no source). */
const WHOLE = 0.9;

/** Takes the whole file: pictures lie anywhere in it. */
export function largestPreview(file: Uint8Array): Result<RawPicture, PreviewFault> {
  const order = byteOrderOf(file, 0);
  if (order === null) return failed('no raw file');
  const bytes = bytesFrom(file, 0, order);
  const directories = directoriesOf(bytes);
  const number = ({ fields }: Directory, tag: number) => wholeNumbers(bytes, fields.get(tag), 1)[0] ?? 0;
  let best: Omit<RawPicture, 'orientation'> | null = null;
  for (const directory of directories)
    for (const found of jpegsOf(file, bytes, directory)) if (best === null || areaOf(found.frame) > areaOf(best.frame)) best = found;
  if (best === null) return failed('no picture inside');
  const sensor = Math.max(0, ...directories.flatMap((each) => [number(each, TAG.imageWidth), number(each, TAG.imageLength)]));
  if (Math.max(best.frame.width, best.frame.height) < WHOLE * sensor) return failed('only a small picture inside');
  const orientation = directories.map((each) => number(each, TAG.orientation)).find((value) => value >= 1 && value <= 8) ?? 1;
  return got({ ...best, orientation });
}

const areaOf = ({ width, height }: PictureSize): number => width * height;

function directoriesOf(bytes: Bytes): Directory[] {
  const found: Directory[] = [];
  const seen = new Set<number>();
  const waiting = [bytes.four(4)];
  for (let at = waiting.shift(); at !== undefined && found.length < MOST_DIRECTORIES; at = waiting.shift()) {
    if (at === null || seen.has(at)) continue;
    seen.add(at);
    const directory = directoryAt(bytes, at);
    if (directory === null) continue;
    found.push(directory);
    waiting.push(...wholeNumbers(bytes, directory.fields.get(TAG.subDirectories), MOST_BELOW), directory.next);
  }
  return found;
}

function jpegsOf(file: Uint8Array, bytes: Bytes, { fields }: Directory): Omit<RawPicture, 'orientation'>[] {
  const places = [
    [TAG.jpegFrom, TAG.jpegLength],
    [TAG.stripOffsets, TAG.stripByteCounts],
  ] as const;
  return places.flatMap(([fromTag, lengthTag]) => {
    const [from, second] = wholeNumbers(bytes, fields.get(fromTag), 2);
    const [length] = wholeNumbers(bytes, fields.get(lengthTag), 1);
    if (from === undefined || second !== undefined || length === undefined || from + length > file.length) return [];
    const frame = frameInJpeg(file.subarray(from, from + length));
    return frame === null ? [] : [{ from, length, frame }];
  });
}
