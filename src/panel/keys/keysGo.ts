// Says when the keys stop reaching the panel while a screen waits for them, and when they come back: a key that goes to the
// page does nothing here, and an eye at the viewfinder does not see why.
import { computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import type { KeyboardFocus } from '../../platform/keyboardFocus.ts';
import { currentPrompt } from '../../sweep/currentPrompt.ts';
import { aloud } from '../../words/catalogue.ts';
import type { Session } from '../session/session.ts';

/** Where the keys go while they are waited for; `back`: they have just come back. */
export type KeysGo = 'here' | 'elsewhere' | 'back';

/** How long it stays on the screen that the keys are back, in milliseconds. */
const BACK_SHOWN = 3000;

type Told = Pick<Session, 'sweep' | 'role' | 'ear' | 'sayShown' | 'clock'>;

/** `beside`: keys are waited for by something that stands in place of the sweep. Ends with the returned function. */
export function watchKeys(
  keyboard: KeyboardFocus,
  { sweep, role, ear, sayShown, clock }: Told,
  beside: boolean,
): { readonly go: ReadonlySignal<KeysGo>; end(): void } {
  const here = signal(keyboard.isHere());
  const go = signal<KeysGo>('here');
  const phase = computed(() => sweep.value?.phase.name);
  const isWanted = computed(() => beside || (role.value === 'owner' && phase.value !== undefined && phase.value !== 'finished'));
  let timer: ReturnType<typeof setTimeout> | undefined;
  const say = () => aloud('firstHold').keys;

  const forget = keyboard.onChange(() => {
    here.value = keyboard.isHere();
  });

  function show(next: KeysGo): void {
    clearTimeout(timer);
    go.value = next;
    if (next === 'back') timer = setTimeout(() => show('here'), BACK_SHOWN);
  }

  /** With what was asked last, which may have been cut short or not been heard. */
  function tellBack(): void {
    sayShown(say().back, 'now');
    const state = sweep.peek();
    if (beside || (state?.phase.name !== 'dialling' && state?.phase.name !== 'judging')) return;
    sayShown(aloud('spoken').prompt(currentPrompt(state, clock())).spoken, 'next');
  }

  const told = effect(() => {
    const before = go.peek();
    if (!isWanted.value) return show('here');
    if (!here.value) {
      if (before === 'elsewhere') return;
      show('elsewhere');
      sayShown(say().elsewhere, 'now');
    } else if (before === 'elsewhere') {
      show('back');
      tellBack();
    }
  });

  // A person who speaks can still answer; the others lose the hold.
  const toldAgain = effect(() => {
    if (phase.value !== 'judging' || go.peek() !== 'elsewhere' || ear.peek() === 'listening') return;
    // The step that ended the hold is carried out first: its end tone.
    queueMicrotask(() => sayShown(say().holdAtStake, 'next'));
  });

  return {
    go,
    end() {
      clearTimeout(timer);
      forget();
      told();
      toldAgain();
    },
  };
}
