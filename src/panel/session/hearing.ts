// Listening for words while a sweep runs here: the ear is open only then, and only after the person said yes to it. One
// matcher decides whichever recogniser heard; what it does not find clear is read back and counts when it is said again.
import { computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import type { Ear, RecognisedBy } from '../../platform/ear/ear.ts';
import type { SweepState } from '../../sweep/state.ts';
import { understood } from '../../sweep/understood.ts';
import type { Question } from '../../voice/askBack.ts';
import type * as Understanding from '../../voice/understanding.ts';
import type { Candidate } from '../../voice/matching.ts';
import { LANGUAGE } from '../../voice/vocabulary/en.ts';
import { createGate } from './gate.ts';
import type { Library } from './library.ts';
import type { Live } from './live.ts';
import type { Ports } from './ports.ts';
import type { EarState } from './session.ts';
import type { Told } from './told.ts';
import type { Troubles } from './troubles.ts';

export interface Hearing {
  readonly state: ReadonlySignal<EarState>;
  readonly ear: Ear;
  /** Opens and closes the ear from now on. */
  start(live: Live, library: Library, told: Told): void;
  /** The one switch; true when it is the switch that opens the ear, and tells nothing else. */
  contact(move: 'down' | 'up'): boolean;
}

const TROUBLE = 'ear';
const NOT_READ = 'Words cannot be understood just now. Close this panel and open it again; keys, the pedal and the pointer do everything.';
const PAGE_LABEL = { 'microphone.html': 'Open the microphone page', 'hearing.html': 'Open the hearing check' } as const;
/** Guesses kept of each thing heard, and how many words of it: longer is talk, which is nobody's business. */
const GUESSES_KEPT = 5;
const WORDS_KEPT = 5;

export function createHearing({ ear: createEar, openPage }: Pick<Ports, 'ear' | 'openPage'>, troubles: Troubles): Hearing {
  const heardBy = signal<EarState>('off');
  const gate = createGate();
  const byPress = signal(false);
  let take: (candidates: readonly Candidate[], final: boolean) => boolean = () => false;
  let wordsNow: () => readonly string[] = () => [];
  /** Read before the ear opens, and not at all where nobody listens. */
  let understanding: typeof Understanding | null = null;
  let question: Question | null = null;

  const ear = createEar({
    language: LANGUAGE,
    wordsNow: () => wordsNow(),
    onState: (next) => {
      heardBy.value = next;
    },
    onHeard: (candidates, final) => take(candidates, final),
    onTrouble(trouble) {
      if (!trouble) return troubles.clear(TROUBLE);
      const { sentence, page } = trouble;
      troubles.add(TROUBLE, sentence, page && { label: PAGE_LABEL[page], run: () => openPage(page) });
    },
  });

  function heard(now: SweepState, candidates: readonly Candidate[], final: boolean, told: Told): boolean {
    const largest = Math.max(Math.abs(now.plan.scale.min), Math.abs(now.plan.scale.max));
    if (!understanding) return false;
    const found = understanding.matcher.match(candidates, understood(now).words, final, largest);
    if (found.is === 'ignored' && !final) return false;
    const decision = understanding.decide(question, found, now.journal.length);
    const words = candidates[0]?.text ?? '';
    if (decision.do !== 'nothing') question = decision.do === 'ask' ? decision.question : null;
    told.heard(kept(candidates), decision.do === 'take' ? 'taken' : decision.do === 'nothing' ? 'other' : decision.do === 'ask' ? 'asked' : 'unclear');
    if (decision.do === 'take') told.take(decision.input);
    if (decision.do === 'ask') told.ask(decision.question, words);
    if (decision.do === 'drop') told.dropped(words);
    if (decision.do === 'say again') told.unclear(words);
    if (decision.do === 'take') gate.close();
    else gate.keepOpen();
    return decision.do !== 'nothing';
  }

  return {
    ear,
    state: computed(() => (byPress.value && !gate.isOpen.value ? 'opens when pressed' : heardBy.value)),
    contact: (move) => byPress.peek() && gate.contact(move),
    start({ sweep, role }, { settings }, told) {
      wordsNow = () => {
        const now = sweep.peek();
        return now && understanding ? understanding.spokenWordsFor(understood(now).words) : [];
      };
      take = (candidates, final) => {
        const now = sweep.peek();
        if (!now || (byPress.peek() && !gate.isOpen.peek())) return false;
        return heard(now, candidates, final, told);
      };
      const runsHere = computed(() => role.value === 'owner' && sweep.value !== null && sweep.value.phase.name !== 'finished');
      effect(() => {
        const { listen, open } = settings.value.voice;
        byPress.value = runsHere.value && listen !== 'off' && open === 'pressed';
      });
      const wanted = computed<RecognisedBy | null>(() => {
        const { listen } = settings.value.voice;
        if (listen === 'off' || !runsHere.value) return null;
        // The browser's recogniser listens only while it is asked to; the taught words need to know the room.
        return listen !== 'own' && byPress.value && !gate.isOpen.value ? null : listen;
      });
      const open = async (): Promise<void> => {
        try {
          understanding = await import('../../voice/understanding.ts');
        } catch {
          troubles.add(TROUBLE, NOT_READ);
          return;
        }
        const by = wanted.peek();
        if (by) ear.open(by);
      };
      effect(() => {
        if (wanted.value) void open();
        else ear.close();
      });
    },
  };
}

const kept = (candidates: readonly Candidate[]): string[] =>
  candidates.slice(0, GUESSES_KEPT).map(({ text }) => {
    const words = text.split(/\s+/);
    return words.length <= WORDS_KEPT ? text : `${words.length} words`;
  });
