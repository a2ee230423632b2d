// English: photographs of the printed target.
import { line } from '../line.ts';
import type { PhotographsWords } from '../photographsWords.ts';
import { write } from './write.ts';

const PICTURES = { one: '# picture', other: '# pictures' };

export const words: PhotographsWords = {
  title: 'Check with photographs',
  about: 'Photograph the printed target with autofocus at full aperture, without sharpening. Then bring the pictures in here.',
  choose: 'Pictures',
  drop: 'Choose them, drop them here, or paste them.',
  stays: 'They are read on this computer, sent nowhere and not kept.',
  pictures: 'Pictures brought in',
  progress: (read, all) => `${write.number(read)} of ${write.count(all, PICTURES)} read.`,
  stage: {
    waiting: 'Waiting',
    opening: 'Opening the file',
    decoding: 'Decoding the picture',
    measuring: 'Measuring',
    'let go': 'Not read. Bring it in again to read it.',
  },
  stop: 'Stop reading',
  clear: 'Remove all pictures',
  fault: {
    'file unread': 'This file cannot be read. Check that it is still there, then bring it in again.',
    'no picture': 'This is no picture that the browser can decode. Bring in a JPEG, PNG, WebP or AVIF, as large as the camera took it.',
    'no picture inside': 'This raw file holds no picture that the browser can decode. Bring in a JPEG of the same shot.',
    'only a small picture inside': 'This raw file holds only a small preview. Bring in a JPEG of the same shot at full size.',
    'too large': 'This picture is too large to be read here. Bring in one of at most 110 megapixels.',
    'too small': 'This picture is too small to be measured. Bring in the picture as the camera took it.',
    stopped: 'Reading this picture has failed. Bring it in once more, or take another one.',
  },
  camera: ({ width, height }, camera) =>
    line([
      `${write.number(width)} × ${write.number(height)} pixels`,
      camera !== null && camera.focalLength !== null && write.millimetres(camera.focalLength),
      camera !== null && camera.aperture !== null && `f/${write.number(camera.aperture, 1)}`,
      camera !== null && camera.distance !== null && write.metres(camera.distance),
      camera !== null && camera.taken !== null && write.dayAndTime(camera.taken),
    ]),
};
