// Where everything begins: go on with a sweep, begin one, practise, or look something up.
import { Heading } from '../parts/heading.tsx';
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { VoiceMark } from '../voice/mark.tsx';

/** Read while what is stored is being read, so that both are there with the rest. */
export const NewSweep = late(async () => (await import('./newSweep.tsx')).NewSweep);
export const Practise = late(async () => (await import('./practise.tsx')).Practise);
const SoundLine = late(async () => (await import('../voice/soundCheck.tsx')).SoundLine, 'sound');
const Unfinished = late(async () => (await import('./unfinished.tsx')).Unfinished);

export function StartScreen() {
  const { session, way } = useSurroundings();
  const sweep = session.sweep.value;
  const first = session.kit.value.bodies.length === 0;
  return (
    <>
      <Heading beside={<VoiceMark />}>Sweepbook</Heading>
      <nav class="row" aria-label="More">
        {PLACES.map(({ at, label }) => (
          <button key={at} type="button" class="link" onClick={() => way.go({ at })}>
            {label}
          </button>
        ))}
      </nav>
      {sweep ? (
        <Unfinished sweep={sweep} />
      ) : (
        <>
          {first && <Practise first />}
          <NewSweep />
          {!first && <Practise />}
          {!session.settings.value.soundChecked && <SoundLine />}
        </>
      )}
    </>
  );
}

const PLACES = [
  { at: 'logbook', label: 'Logbook' },
  { at: 'plan', label: 'Plan' },
  { at: 'kit', label: 'Kit' },
  { at: 'settings', label: 'Settings' },
  { at: 'help', label: 'Help' },
] as const;
