// The pictures brought in on this screen, each with how far it has come. They are let go with the screen: what is kept of a
// picture is what was read off it.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import type { BroughtPicture, ToWorker } from '../../platform/pictures/bridge.ts';
import { pictureReader } from '../../platform/pictures/pictureReader.ts';
import type { Result } from '../../result.ts';

export interface Picture {
  readonly id: string;
  readonly name: string;
  readonly is: 'waiting' | PictureStage | 'let go' | Result<BroughtPicture, PictureFault>;
}

export interface Pictures {
  readonly all: ReadonlySignal<readonly Picture[]>;
  add(file: File): void;
  /** What is read stays; what is not is let go. */
  stop(): void;
  clear(): void;
}

export const isUnderWay = ({ is }: Picture): boolean => typeof is === 'string' && is !== 'let go';

/** `about`: what the reading of a picture must know beside its file. */
export function newPictures(newId: () => string, about: () => Omit<ToWorker, 'file'>): Pictures {
  const all = signal<readonly Picture[]>([]);
  const put = (id: string, is: Picture['is']): void => {
    all.value = all.peek().map((picture) => (picture.id === id ? { ...picture, is } : picture));
  };
  const reader = pictureReader({ onStage: put, onEnd: put });
  return {
    all,
    add(file) {
      const id = newId();
      all.value = [...all.peek(), { id, name: file.name, is: 'waiting' }];
      reader.add([{ id, wanted: { file, ...about() } }]);
    },
    stop() {
      reader.cancel();
      all.value = all.peek().map((picture) => (isUnderWay(picture) ? { ...picture, is: 'let go' } : picture));
    },
    clear() {
      reader.cancel();
      all.value = [];
    },
  };
}
