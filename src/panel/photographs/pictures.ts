// The pictures brought in on this screen, each with how far it has come. They are let go with the screen: what is kept of a
// picture is what was read off it.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { PictureFault, PictureStage } from '../../photographs/brought.ts';
import type { BroughtPicture, ToWorker } from '../../platform/pictures/bridge.ts';
import { pictureReader } from '../../platform/pictures/pictureReader.ts';
import { failed, type Result } from '../../result.ts';

export interface Picture {
  readonly id: string;
  readonly name: string;
  readonly is: 'waiting' | PictureStage | 'let go' | Result<BroughtPicture, PictureFault>;
}

export interface Pictures {
  readonly all: ReadonlySignal<readonly Picture[]>;
  /** All of them are the practice camera's: nothing of them may be kept. A list holds pictures of one sort alone. */
  readonly practice: boolean;
  add(file: File): void;
  /** Puts one into the list that is still to come, and is read once its file is there; null where none came. */
  expect(name: string): (file: File | null) => void;
  /** What is read stays; what is not is let go. */
  stop(): void;
  clear(): void;
}

export const isUnderWay = ({ is }: Picture): boolean => typeof is === 'string' && is !== 'let go';

/** `about`: what the reading of a picture must know beside its file. `practice`: what is known of the practice camera that takes all of them. */
export function newPictures(newId: () => string, about: () => Omit<ToWorker, 'file' | 'practice'>, practice: ToWorker['practice'] = null): Pictures {
  const all = signal<readonly Picture[]>([]);
  const put = (id: string, is: Picture['is']): void => {
    all.value = all.peek().map((picture) => (picture.id === id ? { ...picture, is } : picture));
  };
  const reader = pictureReader({ onStage: put, onEnd: put });
  function expect(name: string): (file: File | null) => void {
    const id = newId();
    all.value = [...all.peek(), { id, name, is: 'waiting' }];
    return (file) => {
      // It may have been let go since.
      if (!all.peek().some((picture) => picture.id === id && picture.is === 'waiting')) return;
      if (file === null) put(id, failed('stopped'));
      else reader.add([{ id, wanted: { file, practice, ...about() } }]);
    };
  }
  return {
    all,
    practice: practice !== null,
    expect,
    add: (file) => expect(file.name)(file),
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
