// The set-up walk: one step at a time, spoken and shown, by word, key, one switch and pointer.
import { useCallback, useEffect, useState } from 'preact/hooks';
import { holdPicture } from '../../optics/setUp/stepPicture.ts';
import { currentStep, isDone, type WalkEvent } from '../../optics/setUp/walk.ts';
import { steps } from '../../units.ts';
import { saidAndShown, words } from '../../words/catalogue.ts';
import { KeysNotice } from '../keys/keysNotice.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { useKeysGo } from '../keys/useKeysGo.ts';
import type { Word } from '../../sweep/inputs.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { VoiceMark } from '../voice/mark.tsx';
import { caseOf } from './given.ts';
import { StepView } from './stepView.tsx';
import { useFirstHold } from './useFirstHold.ts';
import { useBench, type BenchNow } from './useBench.ts';
import { newWalking } from './walking.ts';
import { WalkDone } from './walkDone.tsx';
import { WalkSwitch } from './walkSwitch.tsx';
import { writeDown, writtenDown } from './writtenDown.ts';
import { enteredAt, traitsAt } from './fields.ts';

export function WalkScreen() {
  const { way } = useSurroundings();
  const standing = useBench();
  return (
    <>
      <Heading
        onBack={() => way.back()}
        beside={
          <div class="markplace">
            <VoiceMark />
          </div>
        }
      >
        {words('setUp').title}
      </Heading>
      {'missing' in standing ? <output>{words('bench').missing[standing.missing]}</output> : <Walk standing={standing} />}
    </>
  );
}

const WORDS = ['next', 'back', 'repeat'] as const satisfies readonly Word[];
type WalkWord = (typeof WORDS)[number];
const isWalkWord = (word: string): word is WalkWord => WORDS.some((one) => one === word);
const PRESSES = { short: 'next', double: 'back', long: 'repeat' } as const;

function Walk({ standing: { subject, reckoned } }: { readonly standing: Extract<BenchNow, { reckoned: unknown }> }) {
  const say = words('setUp');
  const { session, bench } = useSurroundings();
  /** The steps stay as they were when the walk began. */
  const [begun] = useState(() => {
    if (!reckoned.rig) return null;
    const entered = enteredAt(bench);
    const given = caseOf(entered.picks, traitsAt(bench), reckoned, reckoned.rig, session.sweep.peek()?.dialled ?? steps(0));
    return newWalking(given, writtenDown(session, bench, subject, entered, reckoned));
  });
  const [isKept, setKept] = useState(true);
  const move = useCallback(
    (event: WalkEvent): void => {
      if (!begun) return;
      const spoken = begun.move(event);
      if (spoken !== null) session.say(saidAndShown('setUp', (setUp) => setUp.speak(spoken)));
      if (event.walked === 'back' || event.walked === 'repeat') return;
      setKept(writeDown(session, bench, subject, begun.state.peek().bench));
    },
    [begun, session, bench, subject],
  );
  const { finish, refusal } = useFirstHold();
  const tell = useCallback(
    (word: string): void => {
      if (!isWalkWord(word)) return;
      if (word === 'next' && begun && isDone(begun.state.peek())) finish();
      else move({ walked: word });
    },
    [begun, move, finish],
  );
  useKeys(tell, WORDS);
  const keysGo = useKeysGo(true);
  useEffect(() => session.attend({ words: WORDS, take: (input) => tell(input.told === 'press' ? PRESSES[input.press] : input.told) }), [session, tell]);
  useEffect(() => {
    const first = begun && currentStep(begun.state.peek());
    if (first) session.say(saidAndShown('setUp', (setUp) => setUp.speak(first.said)));
  }, [begun, session]);
  if (begun === null) return <output>{say.noAperture}</output>;
  const state = begun.state.value;
  const step = currentStep(state);
  return (
    <>
      <p class="muted small" aria-label={say.progress.label}>
        {isDone(state) ? say.progress.done : say.progress.at(state.at + 1, state.steps.length)}
      </p>
      {step ? (
        <StepView step={step} state={state} reckoned={reckoned} onRead={(reading) => move({ walked: 'read', reading })} />
      ) : (
        <WalkDone record={state.bench} picture={holdPicture(state.steps)} isKept={isKept} refusal={refusal} />
      )}
      <WalkSwitch tell={tell} words={WORDS} means={step ? say.means : say.leadsTo} />
      <KeysNotice go={keysGo} afloat />
    </>
  );
}
