// The microphone mark where there is more to tell than that voice is off: what the ear does, or why it is deaf, and whether
// the panel can be heard itself. One press does what helps.
import { useEffect, useState } from 'preact/hooks';
import type { Deaf } from '../../voice/deaf.ts';
import type { RecognisedBy } from '../../voice/deaf.ts';
import type { Session } from '../session/session.ts';
import { useSession, useSurroundings } from '../useSession.ts';
import { askFor } from './askFor.ts';
import { MarkShape } from './markShape.tsx';
import { markStateOf, type MarkState } from './markState.ts';
import { toSheet } from './toSheet.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { voiceNamed } from '../../words/named.ts';
import type { VoiceWords } from '../../words/voiceWords.ts';

export function MarkTold() {
  const { session, way } = useSurroundings();
  const state = useMarkState();
  const say = words('voice');
  const { voice, sound } = session.settings.value;
  const silent = !voice.speak && !sound ? 'off' : session.mute.value ? 'mute' : null;
  const means = run([
    state.is === 'deaf' ? say.deaf[state.why] : say.means[state.is],
    silent && (silent === 'off' ? words('sound').off : words('sound').mute(voiceNamed())),
  ]);
  const shown = [wordOf(state), ...(silent ? [say.markSilent[silent]] : [])];
  const helps = pressOn(state);
  return (
    <>
      <button
        type="button"
        class="voicemark"
        data-voice={state.is}
        data-deaf={state.is === 'deaf' ? state.why : undefined}
        title={means}
        aria-label={say.marked(shown, say.press[helps])}
        onClick={({ currentTarget }) => {
          if (helps === 'sheet') return toSheet(session, way);
          // Where the person stays, the next press of a key is for the sweep again.
          currentTarget.blur();
          HELP[helps](session);
        }}
      >
        <MarkShape is={state.is} />
        {shown.map((word) => (
          <span key={word}>{word} </span>
        ))}
      </button>
      <output class="unseen" aria-label={say.sheet.title} aria-live="polite">
        {state.is === 'deaf' || silent ? means : ''}
      </output>
    </>
  );
}

const wordOf = (state: MarkState): string => (state.is === 'deaf' ? words('voice').markDeaf[state.why] : words('voice').mark[state.is]);

function pressOn(state: MarkState): keyof VoiceWords['press'] {
  if (state.is !== 'deaf') return 'sheet';
  switch (state.why) {
    case 'not asked':
      return 'allow';
    case 'blocked':
      return 'page';
    case 'no words':
    case 'words unreadable':
      return 'teach';
    case 'another window':
      return 'here';
    default:
      return 'sheet';
  }
}

const HELP: Record<Exclude<keyof VoiceWords['press'], 'sheet'>, (session: Session) => void> = {
  allow: (session) => void askFor(session),
  page: (session) => session.openPage('microphone.html'),
  teach: (session) => session.openPage('hearing.html#first'),
  // A window that only follows hears nothing before it runs the sweep.
  here: (session) => (session.role.peek() === 'follower' ? session.takeOver() : session.listenAgain(true)),
};

/** What is true of the ear; while no sweep runs, also what would stand in its way. */
export function useMarkState(): MarkState {
  const session = useSession();
  const { listen, wish } = session.settings.value.voice;
  const ear = session.ear.value;
  const hears = ear === 'listening' || ear === 'starting' || ear === 'opens when pressed';
  const wanted = hears ? 'off' : listen === 'off' ? wish : listen;
  const inTheWay = useInTheWay(session, wanted === 'off' || wanted === 'none' ? null : wanted);
  return markStateOf({ listen, wish, ear, inTheWay, deaf: session.deaf.value, role: session.role.value, sweeping: session.sweep.value !== null });
}

function useInTheWay(session: Session, by: RecognisedBy | null): Deaf | null {
  const [found, setFound] = useState<Deaf | null>(null);
  useEffect(() => {
    setFound(null);
    if (by === null) return;
    const over = new AbortController();
    const look = async (): Promise<void> => {
      const microphone = await session.microphone();
      while (!over.signal.aborted) {
        const why = await microphone.inTheWay(by);
        if (!over.signal.aborted) setFound(why);
        await microphone.changed(AbortSignal.any([over.signal, AbortSignal.timeout(LOOKED_AGAIN_AFTER)]));
      }
    };
    void look();
    return () => over.abort();
  }, [session, by]);
  return found;
}

/** Words are taught in another tab, which no event tells of. */
const LOOKED_AGAIN_AFTER = 2000;
