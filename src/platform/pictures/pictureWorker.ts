// The worker's own script: reads one picture after another, so that the panel answers meanwhile. It asks for nothing and
// sends nothing but its answers to the panel.
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import { cameraFacts } from '../../photographs/cameraFacts.ts';
import { cropAround } from '../../photographs/crop.ts';
import type { FoundEdge } from '../../photographs/findTarget.ts';
import { readPicture } from '../../photographs/reading.ts';
import { seededRandom } from '../../practice/random.ts';
import { got, type Result } from '../../result.ts';
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
  postMessage({ tells: 'end', picture: await brought(wanted) });
}

async function brought({ file, east, kit, situation }: ToWorker): Promise<Result<BroughtPicture, PictureFault>> {
  at('opening');
  const opened = await openPicture(file, east);
  if (!opened.ok) return opened;
  at('decoding');
  const developed = await develop(opened.value);
  if (!developed.ok) return developed;
  at('measuring');
  const { plane, small } = developed.value;
  const { camera } = opened.value;
  const reading = readPicture(plane, cameraFacts(camera, kit, situation), seededRandom(SEED));
  const { edges, compared } = reading.target.ok ? reading.target.value : { edges: [], compared: [] };
  const cropped = (edge: FoundEdge): Promise<Blob> => asFile(cropAround(plane, middleOf(edge), CROP));
  return got({
    frame: { width: plane.width, height: plane.height },
    camera,
    small,
    reading,
    crops: await Promise.all(edges.map(({ edge }) => cropped(edge))),
    compared: await Promise.all(compared.map(cropped)),
  });
}

const middleOf = ({ from, to }: FoundEdge) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });

const at = (stage: PictureStage): void => postMessage({ tells: 'stage', stage });
