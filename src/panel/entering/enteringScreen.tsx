// What to enter for a lens on a body, reached from one of its situations.
import { useMemo, useState } from 'preact/hooks';
import { adviceOnEntering, type MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Weighing } from '../../logbook/entering/oneValue.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { EnterForm, type EnterProps } from '../logbook/enterForm.tsx';
import { useShelf } from '../logbook/useShelf.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import type { Body } from '../../kit/kit.ts';
import type { Steps } from '../../units.ts';
import type { Choice } from '../../logbook/entering/oneValue.ts';
import { writeAsked } from './address.ts';
import { PlaceBands, PlaceView } from './placeView.tsx';
import { WeighPick } from './weighPick.tsx';

export function EnteringScreen({ id }: { readonly id: string }) {
  const say = words('entering');
  const { session, way } = useSurroundings();
  const shelf = useShelf();
  const [weighing, setWeighing] = useState<Weighing>({ by: 'worst share' });
  const kit = session.kit.value;
  const situation = kit.situations.find((one) => one.id === id);
  const advice = useMemo(() => (situation ? adviceOnEntering(situation, kit, shelf, weighing) : null), [situation, kit, shelf, weighing]);
  if (!advice) {
    return (
      <>
        <Heading onBack={() => way.back()}>{say.title}</Heading>
        <p>{say.gone}</p>
      </>
    );
  }
  const { body, lens, places } = advice;
  const bands = places.flatMap(({ evidence }) => evidence);
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      <p class="muted small">{run(say.about(advice))}</p>
      <button type="button" class="link" onClick={() => session.openPage(`entering.html#${writeAsked({ situation: id, weighing })}`)}>
        {say.toPrint}
      </button>
      {bands.length > 1 && <WeighPick evidence={bands} weighing={weighing} onWeigh={setWeighing} />}
      {places.map((place) => (
        <section key={place.converter?.id ?? ''} class="place" aria-label={place.converter?.name ?? say.bare}>
          {(places.length > 1 || place.converter) && <h2>{place.converter ? say.behind(place.converter.name) : say.bare}</h2>}
          <PlaceView place={place} lens={lens} />
          <EnterForms place={place} body={body} />
          {place.evidence.length > 0 && (
            <details>
              <summary>{say.bands}</summary>
              <PlaceBands place={place} />
            </details>
          )}
        </section>
      ))}
    </>
  );
}

function EnterForms({ place: { one, two, evidence, byPictures }, body }: { readonly place: MemoryPlace; readonly body: Body }) {
  const say = words('entering');
  const subjectOf = new Map(evidence.map(({ band, measured }) => [band.id, { subject: measured.subject, record: measured.id }]));
  const formAbout = (title: string, about: EnterProps['about'], value: Steps) => (
    <details key={title}>
      <summary>{title}</summary>
      <EnterForm about={about} scale={body.scale} suggested={value} />
    </details>
  );
  const form = (title: string, { value, fits }: Choice) =>
    formAbout(
      title,
      fits.flatMap(({ band }) => subjectOf.get(band.id) ?? []),
      value,
    );
  if (two) return [two.wide, two.tele].map((choice) => form(choice.fits[0] ? say.enteredAt(choice.fits[0].band.focalLength) : say.entered, choice));
  if (byPictures) return formAbout(say.entered, [{ subject: byPictures.subject, record: null }], byPictures.value);
  return one && form(say.entered, one);
}
