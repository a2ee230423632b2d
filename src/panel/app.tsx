// The panel: which screen is shown, what is announced, and what went wrong.
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { newBench } from './bench/typed.ts';
import { late } from './parts/late.tsx';
import { Frame } from './frame.tsx';
import { Troubles } from './parts/troubles.tsx';
import { isPlanned } from './plan/isPlanned.ts';
import { newWay, type Place, type Way } from './route.ts';
import type { Session } from './session/session.ts';
import type { SweepState } from '../sweep/state.ts';
import { newDraft } from './start/draft.ts';
import { Begin, StartScreen } from './start/startScreen.tsx';
import { Around, useSurroundings } from './useSession.ts';

const BodyScreen = late(async () => (await import('./kit/bodyScreen.tsx')).BodyScreen, 'kit');
const ConverterScreen = late(async () => (await import('./kit/converterScreen.tsx')).ConverterScreen, 'kit');
const EnteringScreen = late(async () => (await import('./entering/enteringScreen.tsx')).EnteringScreen, 'entering', 'conditions', 'kit');
const FilesScreen = late(async () => (await import('./files/filesScreen.tsx')).FilesScreen, 'files');
const BenchScreen = late(async () => (await import('./bench/benchScreen.tsx')).BenchScreen);
const WalkScreen = late(async () => (await import('./bench/walkScreen.tsx')).WalkScreen, 'firstHold');
const HelpScreen = late(async () => (await import('./help/helpScreen.tsx')).HelpScreen, 'firstHold');
const KitScreen = late(async () => (await import('./kit/kitScreen.tsx')).KitScreen, 'kit');
const LensScreen = late(async () => (await import('./kit/lensScreen.tsx')).LensScreen, 'kit');
const LogbookScreen = late(async () => (await import('./logbook/logbookScreen.tsx')).LogbookScreen, 'logbook', 'lookUp');
const OutcomeScreen = late(async () => (await import('./outcome/outcomeScreen.tsx')).OutcomeScreen, 'conditions', 'kit');
const NextScreen = late(async () => (await import('./start/nextScreen.tsx')).NextScreen);
const PlanScreen = late(async () => (await import('./plan/planScreen.tsx')).PlanScreen, 'plan');
const PracticeScreen = late(async () => (await import('./start/practiceScreen.tsx')).PracticeScreen);
const RecordScreen = late(async () => (await import('./logbook/recordScreen.tsx')).RecordScreen, 'record', 'conditions', 'kit');
const SettingsScreen = late(async () => (await import('./settings/settingsScreen.tsx')).SettingsScreen, 'sound');
const TrainingScreen = late(async () => (await import('./training/trainingScreen.tsx')).TrainingScreen);
const SituationScreen = late(async () => (await import('./logbook/situationScreen.tsx')).SituationScreen, 'situation', 'logbook', 'conditions', 'kit');
const SweepScreen = late(async () => (await import('./sweep/sweepScreen.tsx')).SweepScreen, 'firstHold');
const VoiceScreen = late(async () => (await import('./voice/voiceScreen.tsx')).VoiceScreen, 'voice', 'sound');

interface Props {
  readonly session: Session;
  /** What is stored has been read, and the screen stands. */
  readonly onReady?: () => void;
}

export function App({ session, onReady }: Props) {
  const around = useMemo(() => ({ session, way: newWay(), start: newDraft(), bench: newBench() }), [session]);
  const { way } = around;
  const sweep = session.sweep.value;
  useWhereTheSweepIs(session, way);
  const ready = useReady(session, onReady);
  const place = way.place.value;
  // Wanted first and next, whichever way the panel was opened.
  useEffect(() => {
    Begin.fetch();
    SweepScreen.fetch();
  }, []);
  // A key pressed the moment a sweep is over is heard by the screen of its end.
  const sweeping = sweep !== null;
  useEffect(() => {
    if (sweeping) OutcomeScreen.fetch();
  }, [sweeping]);
  return (
    <Around.Provider value={around}>
      <Frame
        screen={ready ? place.at : undefined}
        phase={place.at === 'sweep' ? sweep?.phase.name : undefined}
        announcement={session.announcement.value}
      >
        {place.at !== 'sweep' && <Troubles />}
        {(ready || place.at === 'start') && <Screen place={place} ready={ready} />}
      </Frame>
    </Around.Provider>
  );
}

/** To the sweep as soon as this panel runs one, and away from it when it is over; one that runs elsewhere can wait. */
function useWhereTheSweepIs(session: Session, way: Way): void {
  const running = session.sweep.value?.id;
  const owner = session.role.value === 'owner';
  const lastRef = useRef<SweepState | null>(null);
  useEffect(() => {
    const left = lastRef.current;
    lastRef.current = session.sweep.peek();
    if (running === undefined && session.leftFor.peek()) way.home({ at: 'next' });
    else if (running === undefined) way.home({ at: left && isPlanned(session.plan.peek(), left) ? 'plan' : 'start' });
    else if (owner) way.home({ at: 'sweep' });
  }, [running, owner, way, session]);
}

/** Before what is stored has been read, the kit only looks empty, and a sweep left unfinished is not there yet. */
function useReady(session: Session, onReady: (() => void) | undefined): boolean {
  const [ready, setReady] = useState(false);
  useEffect(() => {
    if (ready) onReady?.();
    else void session.ready.then(() => setReady(true));
  }, [ready, session, onReady]);
  return ready;
}

function Screen({ place, ready }: { readonly place: Place; readonly ready: boolean }) {
  const sweep = useSurroundings().session.sweep.value;
  switch (place.at) {
    case 'start':
      return <StartScreen ready={ready} />;
    case 'sweep':
      if (sweep === null) return <StartScreen ready={ready} />;
      return sweep.phase.name === 'finished' ? <OutcomeScreen sweep={sweep} outcome={sweep.phase.outcome} /> : <SweepScreen sweep={sweep} />;
    case 'logbook':
      return <LogbookScreen />;
    case 'record':
      return <RecordScreen id={place.id} />;
    case 'situation':
      return <SituationScreen id={place.id} byHand={place.byHand ?? false} />;
    case 'entering':
      return <EnteringScreen id={place.id} />;
    case 'next':
      return <NextScreen />;
    case 'practice':
      return <PracticeScreen />;
    case 'plan':
      return <PlanScreen />;
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
    case 'bench':
      return <BenchScreen />;
    case 'walk':
      return <WalkScreen />;
    case 'help':
      return <HelpScreen />;
    case 'training':
      return <TrainingScreen />;
    case 'voice':
      return <VoiceScreen />;
  }
}
