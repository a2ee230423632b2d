// The worker's own script: reads one picture after another, so that the panel answers meanwhile. It asks for nothing and
// sends nothing but its answers to the panel.
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import { cropAround } from '../../photographs/crop.ts';
import { readPicture } from '../../photographs/reading.ts';
import { answered, type Answer } from '../../result.ts';
import type { BroughtPicture, FromWorker, ToWorker } from './bridge.ts';
import { asFile } from './crops.ts';
import { develop } from './develop.ts';
import { openPicture } from './opened.ts';

/** Pixels of a crop each way. */
const CROP = 96;

/** The worker's own, where types know only a window's. */
declare function postMessage(message: FromWorker): void;

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => void read(data));

async function read({ file, east }: ToWorker): Promise<void> {
  postMessage({ tells: 'end', picture: await brought(file, east) });
}

async function brought(file: File, east: number): Promise<Answer<BroughtPicture, PictureFault>> {
  at('opening');
  const opened = await openPicture(file, east);
  if (!opened.ok) return opened;
  at('decoding');
  const developed = await develop(opened.value);
  if (!developed.ok) return developed;
  at('measuring');
  const { plane, small } = developed.value;
  const { camera } = opened.value;
  const reading = readPicture(plane);
  return answered({
    frame: { width: plane.width, height: plane.height },
    camera,
    small,
    reading,
    crops: await Promise.all(reading.places.map((place) => asFile(cropAround(plane, place, CROP)))),
  });
}

const at = (stage: PictureStage): void => postMessage({ tells: 'stage', stage });
