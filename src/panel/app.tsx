// The panel: which screen is shown, what is announced, and what went wrong.
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { newBench } from './bench/typed.ts';
import { late } from './parts/late.tsx';
import type { Held } from './early/held.ts';
import { Frame } from './frame.tsx';
import { useFocusStays } from './keys/focusStays.ts';
import { MishapList } from './parts/troubles.tsx';
import { isPlanned } from './plan/isPlanned.ts';
import { newWay, type Place, type Way } from './route.ts';
import type { Session } from './session/session.ts';
import type { SweepState } from '../sweep/state.ts';
import { newDraft } from './start/draft.ts';
import { Begin, StartScreen } from './start/startScreen.tsx';
import { Around, useSurroundings } from './useSession.ts';
import { wearTheme } from '../platform/theme.ts';

const Elsewhere = late(async () => (await import('./elsewhere.tsx')).Elsewhere);
const OutcomeScreen = late(
  async () => (await import('./outcome/outcomeScreen.tsx')).OutcomeScreen,
  'conditions',
  'entered',
  'kit',
  'told',
  'placed',
  'result',
  'firstHold',
);
const SweepScreen = late(async () => (await import('./sweep/sweepScreen.tsx')).SweepScreen, 'firstHold', 'told');

const faceOf = ({ phase }: SweepState): Pick<typeof SweepScreen, 'fetch' | 'isThere'> => (phase.name === 'finished' ? OutcomeScreen : SweepScreen);

const readFace = async (sweep: SweepState | null): Promise<void> => (sweep ? faceOf(sweep).fetch() : undefined);

interface Props {
  readonly session: Session;
  /** Where the panel takes over a page in which something may have been pressed. */
  readonly held?: Held;
  /** The screen that the address asks for: the browser's list of extensions leads to the settings. */
  readonly asked?: string;
}

export function App({ session, held, asked }: Props) {
  const around = useMemo(() => ({ session, way: newWay(), start: newDraft(), bench: newBench() }), [session]);
  const { way } = around;
  const sweep = session.sweep.value;
  useWhereTheSweepIs(session, way);
  const ready = useReady(session, held);
  useAsked(asked, ready, session, way);
  useTheme(session, ready);
  useFocusStays();
  const place = way.place.value;
  // Wanted first and next, whichever way the panel was opened.
  useEffect(() => {
    void Begin.fetch();
    void SweepScreen.fetch();
    void Elsewhere.fetch();
  }, []);
  // A key pressed the moment a sweep is over is heard by the screen of its end.
  const sweeping = sweep !== null;
  useEffect(() => {
    if (sweeping) void OutcomeScreen.fetch();
  }, [sweeping]);
  return (
    <Around.Provider value={around}>
      <Frame
        screen={ready ? place.at : undefined}
        phase={place.at === 'sweep' && sweep && faceOf(sweep).isThere() ? sweep.phase.name : undefined}
        announcement={session.announcement.value}
      >
        {place.at !== 'sweep' && <MishapList />}
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
function useReady(session: Session, held: Held | undefined): boolean {
  const [ready, setReady] = useState(false);
  useEffect(() => {
    if (ready) held?.release();
    else
      void Promise.all([session.ready.then(() => readFace(session.sweep.peek())), Begin.fetch()])
        .then(() => held?.letUp())
        .then(() => setReady(true));
  }, [ready, session, held]);
  return ready;
}

/** Once, to the screen that was asked for, unless a sweep is under way here. */
function useAsked(asked: string | undefined, ready: boolean, session: Session, way: Way): void {
  useEffect(() => {
    const sweeping = session.sweep.peek() !== null && session.role.peek() === 'owner';
    if (ready && asked === SETTINGS.at && !sweeping) way.home(SETTINGS);
  }, [asked, ready, session, way]);
}

const SETTINGS = { at: 'settings' } as const;

/** Until the settings have been read, the panel wears what it wore last. */
function useTheme(session: Session, ready: boolean): void {
  const { theme } = session.settings.value.look;
  useLayoutEffect(() => {
    if (ready) wearTheme(theme === 'system' ? null : theme);
  }, [ready, theme]);
}

function Screen({ place, ready }: { readonly place: Place; readonly ready: boolean }) {
  const sweep = useSurroundings().session.sweep.value;
  switch (place.at) {
    case 'start':
      return <StartScreen ready={ready} />;
    case 'sweep':
      if (sweep === null) return <StartScreen ready={ready} />;
      return sweep.phase.name === 'finished' ? <OutcomeScreen sweep={sweep} outcome={sweep.phase.outcome} /> : <SweepScreen sweep={sweep} />;
    default:
      return <Elsewhere place={place} />;
  }
}
