// Takes in what the person tells: finds its meaning, moves the sweep, and shows back what it became.
import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Asked, Input } from '../../sweep/inputs.ts';
import { currentPrompt } from '../../sweep/currentPrompt.ts';
import { meaning } from '../../sweep/meaning.ts';
import { refused } from '../../sweep/step.ts';
import type { SweepState } from '../../sweep/state.ts';
import { isStanding, isUndoableBefore, understood } from '../../sweep/understood.ts';
import type { Moment } from '../../units.ts';
import { becameInWords, wordsOfInput } from '../../voice/became.ts';
import { helpInWords, promptInWords } from '../../voice/prompts.ts';
import { readWords, words } from '../../words/catalogue.ts';
import type { Live } from './live.ts';
import type { Heard } from './session.ts';

export interface Told {
  /** What was told last, and what became of it. */
  readonly latest: Signal<Heard | null>;
  /** What the person was asked about a press, while the hold it came in is under way. */
  readonly asked: ReadonlySignal<Asked | null>;
  take(input: Input): void;
}

const NOT_HERE = 'another window runs this sweep: take it over to run it here';

export function createTold({ sweep, role, carrier, dispatch }: Live, now: () => Moment): Told {
  const latest = signal<Heard | null>(null);
  const askedLast = signal<Asked | null>(null);
  const asked = computed(() => {
    const state = sweep.value;
    return state && askedLast.value && isStanding(askedLast.value, state) ? askedLast.value : null;
  });

  /** Its words are read when they are first wanted: few need them twice. */
  async function ask(about: Asked): Promise<void> {
    askedLast.value = about;
    await readWords('firstHold');
    const state = sweep.peek();
    if (asked.peek() !== about || !state) return;
    const text = askedInWords(about, state);
    carrier.tell({ spoken: text, written: text });
  }

  function take(input: Input): void {
    const state = sweep.peek();
    if (!state) return;
    const at = now();
    const became = (what: string): void => {
      latest.value = { words: wordsOfInput(input), became: what, by: 'by' in input ? input.by : 'switch', at };
    };
    if (role.peek() !== 'owner') return became(NOT_HERE);
    const meant = meaning(input, state, at, asked.peek());
    switch (meant.means) {
      case 'events':
        for (const event of meant.events) {
          const step = dispatch(event);
          if (!step) return;
          const refusal = step.effects.some((effect) => effect.do === 'keep') ? undefined : step.effects.find((effect) => effect.do === 'say');
          became(refusal ? promptInWords(refusal.prompt).written : becameInWords(event, step.state));
        }
        return;
      case 'not now':
        carrier.carry(refused(state, meant.why).effects, at);
        return became(promptInWords({ say: 'not now', why: meant.why }).written);
      case 'asked':
        void ask(meant.about);
        return became('asked back');
      case 'repeat':
        carrier.tell(promptInWords(currentPrompt(state, at)));
        return became('said again');
      case 'help':
        carrier.tell(helpInWords(understood(state).words));
        return became('help');
      case 'nothing':
        return;
    }
  }

  return { latest, asked, take };
}

/** The question about a press, once its words have been read. */
export function askedInWords({ about }: Asked, state: SweepState): string {
  const { asked } = words('firstHold');
  return about === 'kept' ? asked.kept(isUndoableBefore(state)) : asked[about];
}
