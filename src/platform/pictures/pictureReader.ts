// The panel's side of reading pictures: hands them to the worker one by one, and ends the worker when the person has enough.
// A picture over which the worker ends costs that picture alone.
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import { failed, type Result } from '../../result.ts';
import type { BroughtPicture, FromWorker, ToWorker } from './bridge.ts';

export interface PictureReader {
  /** Reads them in this order, after those that wait already. */
  add(files: readonly WaitingPicture[]): void;
  /** Lets go of the one that is read and of those that wait; nothing more is told of them. */
  cancel(): void;
}

interface WaitingPicture {
  readonly id: string;
  readonly wanted: ToWorker;
}

export interface PictureListener {
  onStage(id: string, stage: PictureStage): void;
  onEnd(id: string, picture: Result<BroughtPicture, PictureFault>): void;
}

export function pictureReader(listener: PictureListener): PictureReader {
  const waiting: WaitingPicture[] = [];
  let worker: Worker | null = null;
  let reading: WaitingPicture | null = null;

  function next(): void {
    if (reading !== null) return;
    reading = waiting.shift() ?? null;
    if (reading === null) return letGo();
    worker ??= begin();
    worker.postMessage(reading.wanted, []);
  }

  function begin(): Worker {
    const begun = new Worker(new URL('pictureWorker.js', location.href), { type: 'module' });
    begun.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (reading === null || begun !== worker) return;
      if (data.tells === 'stage') listener.onStage(reading.id, data.stage);
      else end(data.picture);
    });
    begun.addEventListener('error', (event) => {
      event.preventDefault();
      if (begun !== worker) return;
      letGo();
      end(failed('stopped'));
    });
    return begun;
  }

  function end(picture: Result<BroughtPicture, PictureFault>): void {
    const ended = reading;
    reading = null;
    if (ended) listener.onEnd(ended.id, picture);
    next();
  }

  /** The memory of a large picture goes with its worker. */
  function letGo(): void {
    worker?.terminate();
    worker = null;
  }

  return {
    add(files) {
      waiting.push(...files);
      next();
    },
    cancel() {
      waiting.length = 0;
      reading = null;
      letGo();
    },
  };
}
