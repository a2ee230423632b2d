// Where everything begins: the field that looks up or names a lens, and Start.
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { VoiceMark } from '../voice/mark.tsx';
import { First } from './first.tsx';

/** Read while what is stored is being read, so that it is there with the rest. */
export const Begin = late(async () => (await import('./begin.tsx')).Begin);
const NameIt = late(async () => (await import('./nameIt.tsx')).NameIt);
const PracticeLink = late(async () => (await import('./practiceLink.tsx')).PracticeLink);
const SoundCheck = late(async () => (await import('../voice/soundCheck.tsx')).SoundCheck, 'sound');
const Unfinished = late(async () => (await import('./unfinished.tsx')).Unfinished);

/** Until what is stored has been read, what is true anyway stands alone. */
export function StartScreen({ ready }: { readonly ready: boolean }) {
  const { session, way } = useSurroundings();
  const sweep = session.sweep.value;
  return (
    <>
      <First go={way.go} beside={ready ? <VoiceMark /> : undefined} />
      {ready && sweep && <Unfinished sweep={sweep} />}
      {ready && !sweep && (
        <>
          <Begin />
          <NameIt />
          <PracticeLink />
          {!session.settings.value.soundChecked && <SoundCheck quiet />}
        </>
      )}
    </>
  );
}
