// Pictures of the practice camera: the way from a picture to what follows from it, tried without a camera. What is true of the practice
// camera can be looked up, to see whether the pictures told it.
import { useEffect, useMemo, useState } from 'preact/hooks';
import { newId, newSeed } from '../../platform/chance.ts';
import { picturedCamera } from '../../practice/pictures/picturedCamera.ts';
import { USUAL_SCALE } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { usePicturesAsked } from './picturesAsked.ts';
import { newPracticePictures } from './practicePictures.ts';
import { practiceTurns } from './practiceTurns.ts';
import type { PictureSource } from './pictureSource.ts';
import { PicturesTold } from './picturesTold.tsx';

export function PracticePicturesScreen({ of }: { /** Null for any. */ readonly of: PictureSource | null }) {
  const { way } = useSurroundings();
  const say = words('practicePictures');
  const [source, setSource] = useState<PictureSource>(() => of ?? anySource());
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      <p class="notice">{say.simulated}</p>
      <Practised key={source.seed} source={source} onAnother={() => setSource(anySource())} />
    </>
  );
}

const anySource = (): PictureSource => ({ seed: newSeed(), scale: USUAL_SCALE, found: null });

interface Props {
  readonly source: PictureSource;
  readonly onAnother: () => void;
}

function Practised({ source: { seed, scale, found }, onAnother }: Props) {
  const say = words('practicePictures');
  const pictures = useMemo(() => newPracticePictures({ seed, scale }, say.picture, newId), [seed, scale, say]);
  useEffect(() => () => pictures.clear(), [pictures]);
  const { centre, step, set } = useMemo(() => picturedCamera(seed, scale), [seed, scale]);
  const subject = { scale, value: found?.value ?? set, band: found?.band ?? null, step: null };
  // The practice camera took its pictures for what was asked then.
  const asked = usePicturesAsked(subject, () => pictures.clear());
  const { use, value } = asked;
  return (
    <PicturesTold pictures={pictures} situation={null} subject={subject} asked={asked}>
      <section class="card">
        <p>{say.about[use]}</p>
        <button
          type="button"
          class="chief"
          disabled={value === null}
          onClick={() => {
            if (value === null) return;
            // One picture comes to the others; a series begins anew.
            if (use !== 'one') pictures.clear();
            pictures.take(practiceTurns(use, value, scale));
          }}
        >
          {say.take[use]}
        </button>
        <button type="button" onClick={onAnother}>
          {say.another}
        </button>
        {pictures.all.value.length > 0 && (
          <details>
            <summary>{say.truth.title}</summary>
            <p>{say.truth.told(centre, step)}</p>
          </details>
        )}
      </section>
    </PicturesTold>
  );
}
