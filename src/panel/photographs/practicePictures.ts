// The pictures of a practice camera: taken one by one by its worker, and read as a person's are.
import type { CameraFacts } from '../../photographs/cameraFacts.ts';
import { EMPTY_KIT } from '../../kit/kit.ts';
import { practiceShooter } from '../../platform/pictures/practiceShooter.ts';
import { TRUE_SIZE } from '../../optics/print/printCheck.ts';
import { PRACTICE_FACTS } from '../../practice/pictures/practiceFacts.ts';
import type { PracticeTurn } from '../../practice/pictures/picturedCamera.ts';
import type { Scale } from '../../sweep/scale.ts';
import { newPictures, type Pictures } from './pictures.ts';

export interface PracticePictures extends Pictures {
  /** Takes one picture for each of these turns, in this order. */
  take(turns: readonly PracticeTurn[]): void;
}

/** `name`: of a picture by its number, which counts from one. */
export function newPracticePictures(
  camera: { readonly seed: number; readonly scale: Scale },
  name: (number: number) => string,
  newId: () => string,
): PracticePictures {
  const facts: CameraFacts = { ...PRACTICE_FACTS, frame: null };
  const pictures = newPictures(newId, () => ({ east: 0, kit: EMPTY_KIT, situation: null, printed: TRUE_SIZE }), facts);
  const expected = new Map<number, (file: File | null) => void>();
  const shooter = practiceShooter((number, jpeg) => {
    expected.get(number)?.(jpeg && new File([jpeg], `${number}.jpg`, { type: jpeg.type }));
    expected.delete(number);
  });
  const letGo = (): void => {
    shooter.cancel();
    expected.clear();
  };
  let taken = 0;
  return {
    ...pictures,
    take(turns) {
      const wanted = turns.map((turn) => {
        taken += 1;
        expected.set(taken, pictures.expect(name(taken)));
        return { ...camera, turn, number: taken };
      });
      shooter.take(wanted);
    },
    stop() {
      letGo();
      pictures.stop();
    },
    clear() {
      letGo();
      pictures.clear();
    },
  };
}
