// The panel: which screen is shown, what is announced, and what went wrong.
import { useEffect, useMemo, useState } from 'preact/hooks';
import { late } from './parts/late.tsx';
import { Troubles } from './parts/troubles.tsx';
import { newWay, type Place, type Way } from './route.ts';
import type { Session } from './session/session.ts';
import { newDraft } from './start/draft.ts';
import { StartScreen } from './start/startScreen.tsx';
import { SweepScreen } from './sweep/sweepScreen.tsx';
import { Around, useSurroundings } from './useSession.ts';

const BodyScreen = late(async () => (await import('./kit/bodyScreen.tsx')).BodyScreen);
const ConverterScreen = late(async () => (await import('./kit/converterScreen.tsx')).ConverterScreen);
const FilesScreen = late(async () => (await import('./files/filesScreen.tsx')).FilesScreen);
const HelpScreen = late(async () => (await import('./help/helpScreen.tsx')).HelpScreen);
const KitScreen = late(async () => (await import('./kit/kitScreen.tsx')).KitScreen);
const LensScreen = late(async () => (await import('./kit/lensScreen.tsx')).LensScreen);
const LogbookScreen = late(async () => (await import('./logbook/logbookScreen.tsx')).LogbookScreen);
const OutcomeScreen = late(async () => (await import('./outcome/outcomeScreen.tsx')).OutcomeScreen);
const RecordScreen = late(async () => (await import('./logbook/recordScreen.tsx')).RecordScreen);
const SettingsScreen = late(async () => (await import('./settings/settingsScreen.tsx')).SettingsScreen);
const TrainingScreen = late(async () => (await import('./training/trainingScreen.tsx')).TrainingScreen);
const SituationScreen = late(async () => (await import('./logbook/situationScreen.tsx')).SituationScreen);

export function App({ session }: { readonly session: Session }) {
  const around = useMemo(() => ({ session, way: newWay(), start: newDraft() }), [session]);
  const { way } = around;
  const sweep = session.sweep.value;
  useWhereTheSweepIs(session, way);
  const ready = useReady(session);
  const place = way.place.value;
  return (
    <Around.Provider value={around}>
      <main data-screen={ready ? place.at : undefined} data-phase={place.at === 'sweep' ? sweep?.phase.name : undefined}>
        <output class="unseen" aria-label="Announcement" aria-live="polite">
          {session.announcement.value}
        </output>
        {place.at !== 'sweep' && <Troubles />}
        {ready && <Screen place={place} />}
      </main>
    </Around.Provider>
  );
}

/** To the sweep as soon as this panel runs one, and away from it when it is over; one that runs elsewhere can wait. */
function useWhereTheSweepIs(session: Session, way: Way): void {
  const running = session.sweep.value?.id;
  const owner = session.role.value === 'owner';
  useEffect(() => {
    if (running === undefined) way.home({ at: 'start' });
    else if (owner) way.home({ at: 'sweep' });
  }, [running, owner, way]);
}

/** Before what is stored has been read, the kit only looks empty, and a sweep left unfinished is not there yet. */
function useReady(session: Session): boolean {
  const [ready, setReady] = useState(false);
  useEffect(() => void session.ready.then(() => setReady(true)), [session]);
  return ready;
}

function Screen({ place }: { readonly place: Place }) {
  const sweep = useSurroundings().session.sweep.value;
  switch (place.at) {
    case 'start':
      return <StartScreen />;
    case 'sweep':
      if (sweep === null) return <StartScreen />;
      return sweep.phase.name === 'finished' ? <OutcomeScreen sweep={sweep} outcome={sweep.phase.outcome} /> : <SweepScreen sweep={sweep} />;
    case 'logbook':
      return <LogbookScreen />;
    case 'record':
      return <RecordScreen id={place.id} />;
    case 'situation':
      return <SituationScreen id={place.id} />;
    case 'kit':
      return <KitScreen />;
    case 'body':
      return <BodyScreen id={place.id} />;
    case 'lens':
      return <LensScreen id={place.id} />;
    case 'converter':
      return <ConverterScreen id={place.id} />;
    case 'files':
      return <FilesScreen />;
    case 'settings':
      return <SettingsScreen />;
    case 'help':
      return <HelpScreen />;
    case 'training':
      return <TrainingScreen />;
  }
}
