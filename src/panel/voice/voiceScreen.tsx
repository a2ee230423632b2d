// The voice sheet: where the sound goes, a clear yes, and a word to try, on one screen. It remembers where it was, follows
// what it waits for, and goes on by itself; the way to begin a sweep stands below it.
import type { RecognisedBy } from '../../voice/deaf.ts';
import { useState } from 'preact/hooks';
import { Heading } from '../parts/heading.tsx';
import { Begin } from '../start/startScreen.tsx';
import { useSession, useSurroundings } from '../useSession.ts';
import { askFor } from './askFor.ts';
import { MarkTold } from './markTold.tsx';
import { Trial } from './trial.tsx';
import type { Stage } from './stage.ts';
import { taughtOf, useStage } from './useStage.ts';
import { FIRST_COUNT, firstWordsIn } from '../../voice/wordGroups.ts';
import { words } from '../../words/catalogue.ts';
import { vocabulary } from '../../words/taught.ts';

export function VoiceScreen() {
  const { session, way } = useSurroundings();
  const [granted, setGranted] = useState(false);
  const stage = useStage(granted);
  /** Allowed, the words are taught at once: nobody has to press for what they have just chosen. */
  const ask = async (): Promise<void> => {
    const allowed = await askFor(session);
    setGranted(allowed);
    if (allowed && session.settings.peek().voice.wish === 'own' && (await taughtOf(session)) < FIRST_COUNT) session.openPage('hearing.html#first');
  };
  const sweep = session.sweep.value;
  return (
    <>
      <Heading onBack={() => way.back()} beside={<MarkTold />}>
        {words('voice').sheet.title}
      </Heading>
      <section class="card" data-stage={stage?.at} aria-label={words('voice').sheet.title}>
        {stage && <Step stage={stage} ask={ask} />}
      </section>
      {stage?.at === 'on' && !sweep && <Begin />}
      {stage?.at === 'on' && sweep && (
        <button type="button" class="chief" onClick={() => way.home({ at: 'sweep' })}>
          {words('voice').sheet.toSweep}
        </button>
      )}
    </>
  );
}

interface Props {
  readonly stage: Stage;
  readonly ask: () => Promise<void>;
}

function Step({ stage, ask }: Props) {
  const session = useSession();
  switch (stage.at) {
    case 'offered':
      return <Offer by={stage.by} isDownloadable={stage.isDownloadable} ask={ask} />;
    case 'asking':
      return (
        <>
          <output>{words('voice').sheet.asking}</output>
          <p class="muted small">{words('voice').sheet.once}</p>
          <button type="button" class="chief" onClick={() => void ask()}>
            {words('voice').sheet.askAgain}
          </button>
          <LeaveOff />
        </>
      );
    case 'refused':
      return (
        <>
          <output>{words('voice').sheet.refused}</output>
          <button type="button" class="chief" onClick={() => session.openPage('microphone.html')}>
            {words('voice').sheet.howToUnblock}
          </button>
          <LeaveOff />
        </>
      );
    case 'teaching':
      return (
        <>
          <output>{words('voice').sheet.teach(stage.taught, FIRST_COUNT)}</output>
          <p>{words('voice').sheet.lesson(firstWordsIn(vocabulary()))}</p>
          <button type="button" class="chief" onClick={() => session.openPage('hearing.html#first')}>
            {words('voice').sheet.openLesson}
          </button>
          <LeaveOff />
        </>
      );
    case 'complete':
    case 'on':
      return <Trial />;
  }
}

function Offer({ by, isDownloadable, ask }: Pick<Props, 'ask'> & { readonly by: RecognisedBy; readonly isDownloadable: boolean }) {
  const session = useSession();
  const wish = (wanted: RecognisedBy): void => {
    session.changeSettings({ voice: { wish: wanted } });
    void ask();
  };
  return (
    <>
      <p>{words('voice').sheet.offered}</p>
      <p>{words('voice').goes[by]}</p>
      <button type="button" class="chief" onClick={() => wish(by)}>
        {by === 'own' ? words('voice').sheet.allowAndTeach : words('voice').sheet.allow}
      </button>
      {isDownloadable && (
        <button type="button" class="link" onClick={() => wish('here')}>
          {words('voice').sheet.downloadInstead}
        </button>
      )}
      {by !== 'own' && (
        <button type="button" class="link" onClick={() => wish('own')}>
          {words('voice').sheet.teachInstead}
        </button>
      )}
    </>
  );
}

function LeaveOff() {
  const session = useSession();
  return (
    <button type="button" onClick={() => session.changeSettings({ voice: { wish: 'none' } })}>
      {words('voice').sheet.leaveOff}
    </button>
  );
}
