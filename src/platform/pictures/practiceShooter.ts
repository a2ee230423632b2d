// The panel's side of the practice camera: asks its worker for pictures, and ends the worker after the last, or when the person has enough.
import type { PracticeTaken, PracticeWanted } from './practiceBridge.ts';

export interface PracticeShooter {
  /** Takes them in this order. Each number is told once: with its picture, or with null where none came of it. */
  take(wanted: readonly PracticeWanted[]): void;
  /** Nothing more is told of those that are not taken yet. */
  cancel(): void;
}

export function practiceShooter(onTaken: (number: number, jpeg: Blob | null) => void): PracticeShooter {
  const awaited = new Set<number>();
  let worker: Worker | null = null;

  function begin(): Worker {
    const begun = new Worker(new URL('practiceWorker.js', location.href), { type: 'module' });
    begun.addEventListener('message', ({ data: { number, jpeg } }: MessageEvent<PracticeTaken>) => {
      if (!awaited.delete(number)) return;
      if (awaited.size === 0) letGo();
      onTaken(number, jpeg);
    });
    begun.addEventListener('error', (event) => {
      event.preventDefault();
      if (begun !== worker) return;
      const lost = [...awaited];
      letGo();
      for (const number of lost) onTaken(number, null);
    });
    return begun;
  }

  function letGo(): void {
    awaited.clear();
    worker?.terminate();
    worker = null;
  }

  return {
    take(wanted) {
      for (const one of wanted) {
        awaited.add(one.number);
        worker ??= begin();
        worker.postMessage(one, []);
      }
    },
    cancel: letGo,
  };
}
