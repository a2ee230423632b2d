// A list of pictures, from what they are for to what they show: each on its own, or all together. What differs between one's own
// pictures and those of the practice camera, how they come in above all, is told by the screen that shows it.
import type { ComponentChildren } from 'preact';
import type { BracketPart } from '../../photographs/series/bracketParts.ts';
import type { CheckPart } from '../../photographs/series/checkParts.ts';
import { words } from '../../words/catalogue.ts';
import { Pick } from '../parts/pick.tsx';
import type { PicturesAsked } from './picturesAsked.ts';
import { USES } from './pictureUse.ts';
import { BracketOfValues } from './bracketOfValues.tsx';
import { CheckOfValue } from './checkOfValue.tsx';
import { NeverKept } from './keepProof.tsx';
import { useFirstOf } from './firstPictures.tsx';
import { isUnderWay, type Pictures } from './pictures.ts';
import { PictureView } from './pictureView.tsx';
import type { SeriesSubject } from './seriesPictures.ts';
import { useToldParts } from './toldParts.ts';
import { ValueToCheck } from './valueToCheck.tsx';

interface Props {
  readonly pictures: Pictures;
  /** What the pictures are of, where it is known. */
  readonly situation: string | null;
  readonly subject: SeriesSubject;
  /** How to set up for them, where that is to be said. */
  readonly setUp?: ComponentChildren;
  readonly asked: PicturesAsked;
  /** How they come in. */
  readonly children: ComponentChildren;
}

export function PicturesTold({ pictures, situation, subject: { scale, band, step }, asked, setUp, children }: Props) {
  const say = words('photographs');
  const { use: uses } = words('series');
  const { use, typed, value } = asked;
  const [checked, bracketed] = [useToldParts<CheckPart>(), useToldParts<BracketPart>()];
  const all = pictures.all.value;
  const { drawn, more } = useFirstOf(all);
  const waiting = all.filter(isUnderWay).length;
  const brought = (
    <>
      {children}
      <output class="small" aria-live="polite">
        {all.length > 0 && say.progress(all.length - waiting, all.length)}
      </output>
      {waiting > 0 && (
        <button type="button" onClick={() => pictures.stop()}>
          {say.stop}
        </button>
      )}
    </>
  );
  return (
    <NeverKept.Provider value={pictures.practice}>
      <Pick legend={uses.title} options={USES.map((one) => ({ value: one, ...uses.options[one] }))} chosen={use} onChoose={(one) => asked.chooseUse(one)} />
      {setUp}
      {(use !== 'one' || pictures.practice) && <ValueToCheck use={use} typed={typed} scale={scale} onTyped={(text) => asked.typeValue(text)} />}
      {use === 'check' && (
        <CheckOfValue pictures={all} situation={situation} scale={scale} value={value} step={step} told={checked}>
          {brought}
        </CheckOfValue>
      )}
      {use === 'bracket' && (
        <BracketOfValues pictures={all} situation={situation} scale={scale} value={value} band={band} step={step} told={bracketed}>
          {brought}
        </BracketOfValues>
      )}
      {use === 'one' && (
        <>
          {brought}
          {all.length > 0 && (
            <ol class="pictures" aria-label={say.pictures}>
              {drawn.map((picture) => (
                <PictureView key={picture.id} picture={picture} situation={situation} step={step} />
              ))}
            </ol>
          )}
          {more}
        </>
      )}
      {all.length > 0 && waiting === 0 && (
        <button type="button" onClick={() => pictures.clear()}>
          {say.clear}
        </button>
      )}
    </NeverKept.Provider>
  );
}
