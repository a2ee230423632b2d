// A round under way, with the clock, the one switch and the voice behind it: what a person tells goes in, and the training
// moves. To the switch and the words it looks like the session of a sweep.
import { computed, signal, type ReadonlySignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { TRAINING_HOLD } from '../../practice/training/shown.ts';
import { newRound, roundOf, train, type Training, type TrainingEvent } from '../../practice/training/training.ts';
import { ROUNDS_KEPT } from '../../settings.ts';
import type { Input, Word } from '../../sweep/inputs.ts';
import { inputOf } from '../../sweep/meaning.ts';
import { PRESSES, type Understood } from '../../sweep/understood.ts';
import type { Light } from '../../sweep/verdict.ts';
import type { Moment } from '../../units.ts';
import { createGestures } from '../session/gestures.ts';
import type { Session } from '../session/session.ts';
import { saidAndShown } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

export interface Trainer {
  readonly training: ReadonlySignal<Training | null>;
  /** The session as the switch, the keys and the lamp should find it during a round. */
  readonly session: Session;
  begin(): void;
  stop(): void;
  tell(word: Word): void;
  /** From now on spoken words go to the round, until the returned function is called. */
  listen(): () => void;
}

export function useTrainer(): Trainer {
  const { session } = useSurroundings();
  const trainer = useMemo(() => createTrainer(session), [session]);
  useEffect(() => trainer.stop, [trainer]);
  return trainer;
}

const LIGHTS: readonly Word[] = ['solid', 'delayed', 'flicker', 'nothing'];

function createTrainer(session: Session): Trainer {
  const training = signal<Training | null>(null);
  const now = signal<Moment>(session.clock());
  let timer: ReturnType<typeof setTimeout> | undefined;
  const gestures = createGestures(session.clock, () => training.peek()?.phase.name ?? null, pressed);

  function move(event: TrainingEvent): void {
    const before = training.peek();
    if (before === null) return;
    now.value = session.clock();
    const after = train(before, event);
    training.value = after;
    if (after.phase.name !== 'holding') clearTimeout(timer);
    else if (before.phase.name !== 'holding') {
      timer = setTimeout(() => move({ did: 'ran', at: session.clock() }), TRAINING_HOLD * 1000);
    }
    const last = after.holds.at(-1);
    if (last && after.holds.length > before.holds.length) session.say(saidAndShown('training', (say) => say.hold.was(last)));
    if (after.tooSoon && !before.tooSoon) session.say(saidAndShown('training', (say) => say.hold.tooSoon));
    keep(before, after);
  }

  function keep(before: Training, after: Training): void {
    const round = before.phase.name === 'finished' ? null : roundOf(after, now.peek());
    if (round === null) return;
    const { rounds, own } = session.settings.peek().training;
    session.changeSettings({ training: { own, rounds: [...rounds, round].slice(-ROUNDS_KEPT) } });
  }

  const judge = (light: Light, at: Moment): void => move({ did: 'judged', at, light });

  function pressed(input: Input): void {
    if (input.told !== 'press') return;
    const means = PRESSES[input.during].find(({ press }) => press === input.press)?.means;
    if (means === 'holding') move({ did: 'began', at: input.downAt });
    else if (means === 'failed') judge('untold', input.downAt);
    else if (means !== undefined && means !== 'turned' && means !== 'next lens' && LIGHTS.includes(means)) judge(lightOf(means), input.downAt);
  }

  function heard(input: Input): void {
    if (input.told === 'hold') move({ did: 'began', at: session.clock() });
    else if (input.told === 'verdict') judge(input.verdict.light, session.clock());
  }

  return {
    training,
    session: {
      ...session,
      now,
      pressed: gestures.pressed,
      contact: gestures.contact,
      understood: computed(() => understoodIn(training.value)),
    },
    begin() {
      const level = session.settings.peek().training.rounds.at(-1)?.level ?? 1;
      training.value = newRound(session.clock() % 2 ** 31, level);
    },
    stop() {
      clearTimeout(timer);
      training.value = null;
    },
    listen: () => session.attend({ words: ['holding', ...LIGHTS], take: heard }),
    tell(word) {
      if (word === 'holding') move({ did: 'began', at: session.clock() });
      else if (LIGHTS.includes(word)) judge(lightOf(word), session.clock());
    },
  };
}

function lightOf(word: Word | 'failed'): Light {
  const input = word === 'failed' || word === 'set' ? null : inputOf(word, 'key');
  return input?.told === 'verdict' ? input.verdict.light : 'untold';
}

function understoodIn(training: Training | null): Understood | null {
  const name = training?.phase.name;
  switch (name) {
    case 'dialling':
      return { words: ['holding'], presses: PRESSES.dialling.filter(({ means }) => means === 'holding') };
    case 'holding':
    case 'judging':
      return { words: LIGHTS, presses: PRESSES[name] };
    default:
      return null;
  }
}
