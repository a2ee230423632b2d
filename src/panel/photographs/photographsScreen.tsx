// Photographs of the printed target: brought in by drop, choice or paste, read one by one, and told each on its own or all together.
import { useEffect, useMemo, useState } from 'preact/hooks';
import { subjectIn } from '../../kit/kit.ts';
import type { BracketPart } from '../../photographs/series/bracketParts.ts';
import type { CheckPart } from '../../photographs/series/checkParts.ts';
import { newId } from '../../platform/chance.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Heading } from '../parts/heading.tsx';
import { Pick } from '../parts/pick.tsx';
import { useSurroundings } from '../useSession.ts';
import { BracketOfValues } from './bracketOfValues.tsx';
import { CheckOfValue } from './checkOfValue.tsx';
import { isUnderWay, newPictures, type Pictures } from './pictures.ts';
import { PictureView } from './pictureView.tsx';
import { useSeriesSubject } from './seriesPictures.ts';
import { useToldParts } from './toldParts.ts';
import { ValueToCheck, valueTyped } from './valueToCheck.tsx';

/** Raw files bear many endings: whether there is a picture in a file, its bytes tell. */
const ANY = '';

const USES = ['one', 'check', 'bracket'] as const;

interface Props {
  /** What the pictures are of, where it is known. */
  readonly situation: string | null;
}

export function PhotographsScreen({ situation }: Props) {
  const say = words('photographs');
  const { use: uses, setUp } = words('series');
  const { session, way } = useSurroundings();
  const pictures = useMemo(
    () => newPictures(newId, () => ({ east: -new Date().getTimezoneOffset(), kit: session.kit.peek(), situation })),
    [session, situation],
  );
  usePaste(pictures);
  useEffect(() => () => pictures.clear(), [pictures]);
  const { scale, value: known, band, step } = useSeriesSubject(situation);
  const [use, setUse] = useState<(typeof USES)[number]>('one');
  const [typed, setTyped] = useState(known === null ? '' : writeSteps(known));
  const [checked, bracketed] = [useToldParts<CheckPart>(), useToldParts<BracketPart>()];
  const value = valueTyped(typed, scale);
  const { kit } = session;
  const of = kit.value.situations.find(({ id }) => id === situation);
  const subject = of && words('told').subject(subjectIn(kit.value, of));
  const all = pictures.all.value;
  const waiting = all.filter(isUnderWay).length;
  const bringing = (
    <>
      <section class="card">
        <p>{say.about}</p>
        <ChooseFile label={say.choose} hint={say.drop} accept={ANY} many onFile={(file) => pictures.add(file)} />
        <p class="muted small">{say.stays}</p>
      </section>
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
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {subject && (
        <p class="muted small">
          {subject.lens}
          <br />
          {subject.details}
        </p>
      )}
      <Pick legend={uses.title} options={USES.map((one) => ({ value: one, ...uses.options[one] }))} chosen={use} onChoose={setUse} />
      <details>
        <summary>{setUp.title}</summary>
        <ol>
          {setUp.steps.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ol>
      </details>
      {use !== 'one' && <ValueToCheck use={use} typed={typed} scale={scale} onTyped={setTyped} />}
      {use === 'check' && (
        <CheckOfValue pictures={all} situation={situation} scale={scale} value={value} step={step} told={checked}>
          {bringing}
        </CheckOfValue>
      )}
      {use === 'bracket' && (
        <BracketOfValues pictures={all} situation={situation} scale={scale} value={value} band={band} step={step} told={bracketed}>
          {bringing}
        </BracketOfValues>
      )}
      {use === 'one' && (
        <>
          {bringing}
          {all.length > 0 && (
            <ol class="pictures" aria-label={say.pictures}>
              {all.map((picture) => (
                <PictureView key={picture.id} picture={picture} situation={situation} step={step} />
              ))}
            </ol>
          )}
        </>
      )}
      {all.length > 0 && waiting === 0 && (
        <button type="button" onClick={() => pictures.clear()}>
          {say.clear}
        </button>
      )}
    </>
  );
}

/** Files on the clipboard, wherever on the screen they are pasted. */
function usePaste(pictures: Pictures): void {
  useEffect(() => {
    const pasted = (event: ClipboardEvent): void => {
      for (const file of event.clipboardData?.files ?? []) pictures.add(file);
    };
    document.addEventListener('paste', pasted);
    return () => document.removeEventListener('paste', pasted);
  }, [pictures]);
}
