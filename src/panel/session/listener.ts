// What is heard becomes what is told. One matcher decides whichever recogniser heard; what it does not find clear is read
// back and counts when it is said again. The ear is open only while a sweep or its result stands here, or only when the switch asks for it.
import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Deaf, Missed, RecognisedBy } from '../../voice/deaf.ts';
import type { Ear } from '../../platform/ear/ear.ts';
import type { EarOwner } from '../../platform/ear/owner.ts';
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Settings } from '../../settings.ts';
import type { SweepEvent } from '../../sweep/event.ts';
import type { Word } from '../../sweep/inputs.ts';
import type { SweepState } from '../../sweep/state.ts';
import { heeded } from '../../sweep/heeded.ts';
import { understood } from '../../sweep/understood.ts';
import type { Moment } from '../../units.ts';
import { decide, type Decision, type Question } from '../../voice/askBack.ts';
import type { Guess } from '../../voice/matching.ts';
import { asName, nameAfterNextIn } from '../../voice/nextLens.ts';
import { matcherFor } from '../../voice/phonetic/match.ts';
import { spokenWordsFor } from '../../voice/wordsNow.ts';
import { firstWords } from '../../words/first.ts';
import { aloud, saidAndShown, words } from '../../words/catalogue.ts';
import type { InWords } from '../../words/inWords.ts';
import type { SessionWords } from '../../words/sessionWords.ts';
import { createGate } from './gate.ts';
import { heardAs } from './heardAs.ts';
import { createLearning } from './learning.ts';
import type { LibraryStore } from './library.ts';
import type { Live } from './live.ts';
import type { Ports } from './ports.ts';
import type { Attendant, EarState } from './session.ts';
import type { Told } from './told.ts';
import type { Mishaps } from './troubles.ts';

export interface Listener {
  deafen(): () => void;
  again(here: boolean): void;
  contact(move: 'down' | 'up'): boolean;
}

interface World {
  readonly ear: (owner: EarOwner) => Ear;
  readonly takes: Ports['takes'];
  readonly now: Ports['now'];
  readonly tones: Ports['tones'];
  readonly troubles: Mishaps;
  /** What is understood now. */
  readonly language: ReadonlySignal<HeardLanguage>;
  readonly live: Live;
  readonly library: LibraryStore;
  readonly told: Told;
  /** Whoever is talked to in place of the sweep. */
  readonly attending: ReadonlySignal<Attendant | null>;
  /** How to listen now; null while nothing is to be listened for. */
  readonly voice: ReadonlySignal<Settings['voice'] | null>;
  readonly state: Signal<EarState>;
  /** The finished sweep is to be left for the lens of this name. */
  readonly onNextLens: (name: string) => void;
  readonly deaf: Signal<Deaf | null>;
}

const TROUBLE = 'look-up';
/** Guesses kept of each thing heard, and how many words of it: longer is talk, which is nobody's business. */
const GUESSES_KEPT = 5;
const WORDS_KEPT = 5;
const BECAME = { take: 'taken', ask: 'asked', drop: 'taken', 'say again': 'unclear', nothing: 'other' } as const satisfies Record<
  Decision['do'],
  Extract<SweepEvent, { did: 'heard' }>['became']
>;

export function createListener(world: World): Listener {
  const { ear: createEar, takes, tones, troubles, now, language, live, library, told, attending, voice, state, deaf, onNextLens } = world;
  const { sweep, carrier, note } = live;
  const heardBy = signal<EarState>('off');
  const matcher = computed(() => ({ ...matcherFor(language.value), nameAfterNext: nameAfterNextIn(language.value.naming) }));
  const gate = createGate();
  const learning = createLearning({ takes, sweep, settings: library.settings, troubles });
  const isByPress = computed(() => voice.value?.open === 'pressed');
  const isShut = computed(() => isByPress.value && !gate.isOpen.value);
  let question: Question | null = null;
  /** Of what is listened to now: what it is about, since when, and whoever is to know when that is over. */
  let step = { since: now(), over: new AbortController() };

  function wordsNow(): readonly Word[] {
    const standing = sweep.peek();
    return attending.peek()?.words ?? (standing ? heeded(understood(standing).words) : []);
  }

  /** During a hold nothing else may be said, and beside a sweep the logbook is not asked. */
  function mayAsk(): boolean {
    const phase = sweep.peek()?.phase.name;
    return !attending.peek() && phase !== undefined && phase !== 'holding' && phase !== 'judging';
  }

  const namesNow = (): readonly string[] => library.kit.peek().lenses.map(({ name }) => name);

  const ear = createEar({
    get language() {
      return language.peek();
    },
    wordsNow: () => spokenWordsFor(language.peek(), wordsNow(), mayAsk() ? namesNow() : null),
    namesNow,
    passes: () => step.over.signal,
    onState: (next) => {
      heardBy.value = next;
    },
    onHeard: (candidates, final, ago = 0) => !isShut.peek() && heard(candidates, final, ago),
    onMissed: (word, why) => isShut.peek() || missed(word, why),
    onDeaf,
  });

  /** Whoever has the eye at the viewfinder sees no screen: during a sweep it is said aloud, and that it is over. */
  function onDeaf(why: Deaf | null): void {
    const before = deaf.peek();
    if (why === before) return;
    deaf.value = why;
    if (attending.peek() || !ear.isOpen()) return;
    const { deafSaid, hearsAgain } = aloud('voice');
    carrier.sayBeside(why ? deafSaid[why] : hearsAgain);
  }

  /** `ago`: milliseconds since its sound began. Begun before the last step, it was about what is over, and is only shown. */
  function heard(candidates: readonly Guess[], final: boolean, ago: number): boolean {
    const isLate = now() - ago < step.since;
    if (isLate && !final) return false;
    const standing = sweep.peek();
    const words = wordsNow();
    if (words.length === 0) return false;
    const { min, max } = standing?.plan.scale ?? { min: 0, max: 0 };
    const found = matcher.peek().match(candidates, words, final, Math.max(Math.abs(min), Math.abs(max)));
    if (found.is === 'ignored' && !final) return false;
    if (isLate) return tooLate(candidates, found.is === 'taken');
    const asked = found.is === 'ignored' && mayAsk() ? questionToLogbook(candidates) : null;
    if (asked !== null) {
      note({ did: 'heard', at: now(), guesses: kept(candidates), became: 'taken' });
      gate.close();
      void lookUp(asked, candidates[0]?.text ?? '');
      return true;
    }
    const name = final && !attending.peek() && standing?.phase.name === 'finished' && !standing.plan.practice ? nameIn(candidates) : null;
    if (name !== null) {
      gate.close();
      nextLens(name);
      return true;
    }
    const decision = decide(question, found, standing?.journal.length ?? 0);
    if (!attending.peek()) note({ did: 'heard', at: now(), guesses: kept(candidates), became: BECAME[decision.do] });
    if (decision.do === 'take') gate.close();
    else gate.keepOpen();
    if (decision.do === 'nothing') return false;
    question = decision.do === 'ask' ? decision.question : null;
    act(decision, candidates[0]?.text ?? '');
    if (decision.do === 'take' && standing && !attending.peek()) learning.taken(candidates[0]?.takes ?? [], standing.journal);
    return true;
  }

  /** What was heard stays as it was; what became of it is in the language of the screens. */
  function show(heard: string, became: () => string): void {
    told.latest.value = heardAs(() => heard, became, 'voice', now());
  }

  /** Shown and not said: whoever talks, or the panel, was speaking. */
  function missed(word: string, why: Missed): void {
    show(word, () => words('session').missed[why]);
    if (!attending.peek()) note({ did: 'heard', at: now(), guesses: [word], became: 'other' });
    gate.keepOpen();
  }

  function tooLate(candidates: readonly Guess[], isWord: boolean): boolean {
    if (!attending.peek()) note({ did: 'heard', at: now(), guesses: kept(candidates), became: 'other' });
    if (isWord) show(candidates[0]?.text ?? '', () => words('session').became['too late']);
    return isWord;
  }

  /** What the logbook is asked; null when it is not. */
  function questionToLogbook(candidates: readonly Guess[]): string | null {
    return candidates.map(({ text }) => matcher.peek().questionIn(text, namesNow())).find((one) => one !== null && one !== '') ?? null;
  }

  const nameIn = (candidates: readonly Guess[]): string | null =>
    candidates.map(({ text }) => matcher.peek().nameAfterNext(text)).find((one) => one !== null) ?? null;

  /** The lens that was named begins with its number in figures. */
  function nextLens(said: string): void {
    void import('../../logbook/search/numberWords.ts').then(
      ({ numberWordsIn }) => onNextLens(asName(numberWordsIn(language.peek().numbers).inFigures(said))),
      () => troubles.add('ear', firstWords().unread),
    );
  }

  async function lookUp(asked: string, said: string): Promise<void> {
    try {
      const { lookedUp } = await import('./looking.ts');
      answer(said, 'looked up', await lookedUp(library, asked, now()));
    } catch {
      troubles.add(TROUBLE, firstWords().unread);
    }
  }

  /** Says something about words that were not taken. */
  function answer(heard: string, became: keyof SessionWords['became'], said: InWords): void {
    show(heard, () => words('session').became[became]);
    carrier.tell(said);
  }

  function act(decision: Exclude<Decision, { do: 'nothing' }>, text: string): void {
    switch (decision.do) {
      case 'take':
        return (attending.peek() ?? told).take(decision.input);
      case 'ask':
        return answer(
          text,
          'asked back',
          saidAndShown('spoken', ({ askBack }) => askBack.question(decision.question.asked)),
        );
      case 'drop':
        return answer(
          text,
          'not taken',
          saidAndShown('spoken', ({ askBack }) => askBack.notTaken),
        );
      case 'say again':
        return answer(
          text,
          'not clear',
          saidAndShown('spoken', ({ askBack }) => askBack.sayAgain),
        );
    }
  }

  const about = computed(() => attending.value ?? aboutIn(sweep.value));
  effect(() => {
    void about.value;
    step.over.abort();
    step = { since: now(), over: new AbortController() };
  });
  effect(() => {
    state.value = isShut.value ? 'opens when pressed' : heardBy.value;
  });
  const wanted = computed<RecognisedBy | null>(() => {
    const listen = voice.value?.listen ?? 'off';
    if (listen === 'off') return null;
    // The browser's recogniser listens only while it is asked to; the taught words need to know the room.
    return listen !== 'own' && isShut.value ? null : listen;
  });
  let heardIn = language.peek();
  effect(() => {
    // Another language has other words taught, and another recogniser.
    if (heardIn !== language.value) ear.close();
    heardIn = language.value;
    if (wanted.value) ear.open(wanted.value);
    else ear.close();
  });

  /** A wireless loudspeaker sounds on after the browser has ended. */
  function deafen(): () => void {
    const hearAgain = ear.deafen();
    return () => {
      const late = tones.late();
      if (late > 0) setTimeout(hearAgain, late * 1000);
      else hearAgain();
    };
  }

  return { deafen, again: ear.again, contact: (move) => isByPress.peek() && gate.contact(move) };
}

/** What a word would be about: one hold to its verdict, or one step between holds. */
function aboutIn(state: SweepState | null): Moment | number | null {
  if (!state) return null;
  const { phase, journal } = state;
  return phase.name === 'holding' || phase.name === 'judging' ? phase.since : journal.length;
}

const kept = (candidates: readonly Guess[]): string[] =>
  candidates.slice(0, GUESSES_KEPT).map(({ text }) => {
    const words = text.split(/\s+/);
    return words.length <= WORDS_KEPT ? text : `${words.length} words`;
  });
