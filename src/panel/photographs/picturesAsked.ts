// What a person asks of the pictures: what they are for, and the correction that they are about.
import { useState } from 'preact/hooks';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import type { PictureUse } from './pictureUse.ts';
import type { SeriesSubject } from './seriesPictures.ts';
import { valueTyped } from './valueToCheck.tsx';

export interface PicturesAsked {
  readonly use: PictureUse;
  readonly typed: string;
  /** Null where it was not told, or is no correction of the scale. */
  readonly value: Steps | null;
  chooseUse(use: PictureUse): void;
  typeValue(text: string): void;
}

/** `onAsked`: something else is asked now than before. */
export function usePicturesAsked({ scale, value: known }: SeriesSubject, onAsked?: () => void): PicturesAsked {
  const [use, setUse] = useState<PictureUse>('one');
  const [typed, setTyped] = useState(known === null ? '' : writeSteps(known));
  return {
    use,
    typed,
    value: valueTyped(typed, scale),
    chooseUse(one) {
      setUse(one);
      onAsked?.();
    },
    typeValue(text) {
      setTyped(text);
      onAsked?.();
    },
  };
}
