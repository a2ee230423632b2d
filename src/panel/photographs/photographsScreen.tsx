// Photographs of the printed target: brought in by drop, choice or paste, read one by one, and each told on its own.
import { useEffect, useMemo } from 'preact/hooks';
import { subjectIn } from '../../kit/kit.ts';
import { newId } from '../../platform/chance.ts';
import { words } from '../../words/catalogue.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { isUnderWay, newPictures, type Pictures } from './pictures.ts';
import { PictureView } from './pictureView.tsx';

/** Raw files bear many endings: whether there is a picture in a file, its bytes tell. */
const ANY = '';

interface Props {
  /** What the pictures are of, where it is known. */
  readonly situation: string | null;
}

export function PhotographsScreen({ situation }: Props) {
  const say = words('photographs');
  const { session, way } = useSurroundings();
  const pictures = useMemo(
    () => newPictures(newId, () => ({ east: -new Date().getTimezoneOffset(), kit: session.kit.peek(), situation })),
    [session, situation],
  );
  usePaste(pictures);
  useEffect(() => () => pictures.clear(), [pictures]);
  const { kit } = session;
  const known = kit.value.situations.find(({ id }) => id === situation);
  const subject = known && words('told').subject(subjectIn(kit.value, known));
  const all = pictures.all.value;
  const waiting = all.filter(isUnderWay).length;
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
      {all.length > 0 && (
        <ol class="pictures" aria-label={say.pictures}>
          {all.map((picture) => (
            <PictureView key={picture.id} picture={picture} />
          ))}
        </ol>
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
