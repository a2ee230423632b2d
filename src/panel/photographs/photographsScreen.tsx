// Photographs of the printed target: brought in by drop, choice or paste, read one by one, and told each on its own or all together.
import { useEffect, useMemo } from 'preact/hooks';
import { subjectIn } from '../../kit/kit.ts';
import { newId } from '../../platform/chance.ts';
import { words } from '../../words/catalogue.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { usePicturesAsked } from './picturesAsked.ts';
import { newPictures, type Pictures } from './pictures.ts';
import { PicturesTold } from './picturesTold.tsx';
import { newPrintedScale, PrintedScaleField, printMeasured } from './printedScale.tsx';
import { useSeriesSubject } from './seriesPictures.ts';

/** Raw files bear many endings: whether there is a picture in a file, its bytes tell. */
const ANY = '';

interface Props {
  /** What the pictures are of, where it is known. */
  readonly situation: string | null;
}

export function PhotographsScreen({ situation }: Props) {
  const say = words('photographs');
  const { session, way } = useSurroundings();
  const scale = useMemo(() => newPrintedScale(printMeasured(session.records.peek(), situation)), [session, situation]);
  const pictures = useMemo(
    () => newPictures(newId, () => ({ east: -new Date().getTimezoneOffset(), kit: session.kit.peek(), situation, printed: scale.factor() })),
    [session, situation, scale],
  );
  usePaste(pictures);
  useEffect(() => () => pictures.clear(), [pictures]);
  const subject = useSeriesSubject(situation);
  const asked = usePicturesAsked(subject);
  const { kit } = session;
  const of = kit.value.situations.find(({ id }) => id === situation);
  const named = of && words('told').subject(subjectIn(kit.value, of));
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {named && (
        <p class="muted small">
          {named.lens}
          <br />
          {named.details}
        </p>
      )}
      <PicturesTold pictures={pictures} situation={situation} subject={subject} asked={asked} setUp={<SetUp />}>
        <section class="card">
          <p>{say.about}</p>
          <PrintedScaleField scale={scale} />
          <ChooseFile label={say.choose} hint={say.drop} accept={ANY} many onFile={(file) => pictures.add(file)} />
          <p class="muted small">{say.stays}</p>
          {pictures.all.value.length === 0 && (
            <button type="button" class="link" onClick={() => way.go({ at: 'practice pictures', of: null })}>
              {say.practise}
            </button>
          )}
        </section>
      </PicturesTold>
    </>
  );
}

function SetUp() {
  const say = words('series').setUp;
  return (
    <details>
      <summary>{say.title}</summary>
      <ol>
        {say.steps.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ol>
    </details>
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
