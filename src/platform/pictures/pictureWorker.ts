// The worker's own script: reads one picture after another, so that the panel answers meanwhile. It asks for nothing and
// sends nothing but its answers to the panel.
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import { cameraFacts } from '../../photographs/cameraFacts.ts';
import { cropAround } from '../../photographs/crop.ts';
import type { FoundEdge } from '../../photographs/findTarget.ts';
import { readPicture } from '../../photographs/reading.ts';
import { seededRandom } from '../../practice/random.ts';
import { failed, got, type Result } from '../../result.ts';
import type { BroughtPicture, FromWorker, ToWorker } from './bridge.ts';
import { asFile } from './crops.ts';
import { develop } from './develop.ts';
import { openPicture } from './opened.ts';

/** Pixels of a crop each way. */
const CROP = 96;
/** One and the same, so that a picture always gives the same figures. */
const SEED = 1;

/** The worker's own, where types know only a window's. */
declare function postMessage(message: FromWorker): void;

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => void read(data));

async function read(wanted: ToWorker): Promise<void> {
  // A picture over which something gives way is one that cannot be read: without an answer the panel would wait for ever.
  const picture = await brought(wanted).catch(() => failed<PictureFault>('stopped'));
  postMessage({ tells: 'end', picture });
}

async function brought({ file, east, kit, situation, printed, practice }: ToWorker): Promise<Result<BroughtPicture, PictureFault>> {
  at('opening');
  const opened = await openPicture(file, east);
  if (!opened.ok) return opened;
  at('decoding');
  const developed = await develop(opened.value);
  if (!developed.ok) return developed;
  at('measuring');
  const { picture, small, close } = developed.value;
  try {
    const { camera, written } = opened.value;
    const reading = readPicture(picture, { ...(practice ?? cameraFacts(camera, written, kit, situation)), printed }, seededRandom(SEED));
    const { edges, compared } = reading.target.ok ? reading.target.value : { edges: [], compared: [] };
    const cropped = (edge: FoundEdge): Promise<Blob> => asFile(cropAround(picture, middleOf(edge), CROP));
    return got({
      frame: { width: picture.width, height: picture.height },
      camera,
      small: await small,
      reading,
      crops: await Promise.all(edges.map(({ edge }) => cropped(edge))),
      compared: await Promise.all(compared.map(cropped)),
    });
  } catch {
    // No room for a canvas or a file; what else may come is the tests' to find.
    return failed('too large');
  } finally {
    close();
  }
}

const middleOf = ({ from, to }: FoundEdge) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });

const at = (stage: PictureStage): void => postMessage({ tells: 'stage', stage });
