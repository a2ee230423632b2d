// Where everything begins: the field that looks up or names a lens, and Start.
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { VoiceMark } from '../voice/mark.tsx';
import { First } from './first.tsx';
import { FirstFieldOfDraft } from './firstField.tsx';
import { StillReading } from './stillReading.tsx';
import { useUpdated } from './useUpdated.ts';

/** Read while what is stored is being read, with its look-up, so that what was typed by then is understood. */
export const Begin = late(async () => (await Promise.all([import('./begin.tsx'), import('./finding.ts')]))[0].Begin, 'start', 'told', 'logbook', 'lookUp');
const BackupLine = late(async () => (await import('./backupLine.tsx')).BackupLine, 'files');
const NameIt = late(async () => (await import('./nameIt.tsx')).NameIt, 'start', 'told');
const PhotographsLink = late(async () => (await import('./photographsLink.tsx')).PhotographsLink, 'start');
const PracticeLink = late(async () => (await import('./practiceLink.tsx')).PracticeLink, 'start');
const SoundCheck = late(async () => (await import('../voice/soundCheck.tsx')).SoundCheck, 'sound', 'settings');
const Updated = late(async () => (await import('./updated.tsx')).Updated, 'about');
const Unfinished = late(async () => (await import('./unfinished.tsx')).Unfinished, 'start', 'told');

/** Until what is stored has been read, what is true anyway stands alone. */
export function StartScreen({ ready }: { readonly ready: boolean }) {
  const { session, way } = useSurroundings();
  const sweep = session.sweep.value;
  // For a moment it also stands in for a sweep that was just left.
  const updated = useUpdated(ready && sweep === null && way.place.value.at === 'start');
  return (
    <>
      <First go={way.go} beside={ready ? <VoiceMark /> : undefined} />
      {!ready && <FirstFieldOfDraft />}
      {!ready && <StillReading />}
      {ready && sweep && <Unfinished sweep={sweep} />}
      {ready && !sweep && (
        <>
          <Begin />
          {updated && <Updated />}
          <NameIt />
          <PracticeLink />
          <PhotographsLink />
          {session.records.value.length + session.byHand.value.length > 0 && <BackupLine />}
          {!session.settings.value.soundChecked && <SoundCheck quiet />}
        </>
      )}
    </>
  );
}
