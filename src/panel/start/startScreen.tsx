// Where everything begins: the field that looks up or names a lens, and Start.
import { Heading } from '../parts/heading.tsx';
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';

/** Read while what is stored is being read, so that it is there with the rest. */
export const Begin = late(async () => (await import('./begin.tsx')).Begin);
const NameIt = late(async () => (await import('./nameIt.tsx')).NameIt);
const PracticeLink = late(async () => (await import('./practiceLink.tsx')).PracticeLink);
const Unfinished = late(async () => (await import('./unfinished.tsx')).Unfinished);

export function StartScreen() {
  const { session, way } = useSurroundings();
  const sweep = session.sweep.value;
  const { lenses, situations } = session.kit.value;
  const waits = [...lenses, ...situations].some(({ standIn, retired }) => standIn && retired === null);
  return (
    <>
      <Heading>Sweepbook</Heading>
      {sweep ? <Unfinished sweep={sweep} /> : <Begin />}
      {!sweep && waits && <NameIt />}
      {!sweep && <PracticeLink />}
      <nav class="row" aria-label="More">
        {PLACES.map(({ at, label }) => (
          <button key={at} type="button" class="link" onClick={() => way.go({ at })}>
            {label}
          </button>
        ))}
      </nav>
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
