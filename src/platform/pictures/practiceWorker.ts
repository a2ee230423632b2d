// The practice camera's own script: takes one picture after another, as files that a camera would have written. It is loaded only where
// somebody practises, asks for nothing, and sends nothing but its pictures to the panel.
import { picturedCamera } from '../../practice/pictures/picturedCamera.ts';
import { practicePicture, practicePrints } from '../../practice/pictures/practicePicture.ts';
import type { PracticeTaken, PracticeWanted } from './practiceBridge.ts';

/** Of the JPEG, as a camera saves at best quality (common practice, no source). */
const QUALITY = 0.95;
/** Keeps the chance of one picture apart from that of the next. */
const APART = 7_919;

/** The worker's own, where types know only a window's. */
declare function postMessage(message: PracticeTaken): void;

const prints = practicePrints();

addEventListener('message', ({ data }: MessageEvent<PracticeWanted>) => void take(data).catch(reportError));

async function take({ seed, scale, turn, number }: PracticeWanted): Promise<void> {
  // The panel is told of whatever goes wrong here by an error of this script.
  if (!prints.ok) throw new Error(prints.fault.is);
  const { width, height, rgba } = practicePicture(prints.value, picturedCamera(seed, scale), turn, seed + APART * number);
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d', { alpha: false })?.putImageData(new ImageData(Uint8ClampedArray.from(rgba), width, height), 0, 0);
  postMessage({ number, jpeg: await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY }) });
}
