// Says when the keys stop reaching the panel while a screen waits for them, and when they come back: a key that goes to the
// page does nothing here, and an eye at the viewfinder does not see why.
import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { KeyboardFocus } from '../../platform/keyboardFocus.ts';
import { currentPrompt } from '../../sweep/currentPrompt.ts';
import { promptInWords } from '../../voice/prompts.ts';
import { words } from '../../words/catalogue.ts';
import type { Live } from './live.ts';
import type { EarState, KeysGo } from './session.ts';

interface World {
  readonly keyboard: KeyboardFocus;
  readonly live: Pick<Live, 'sweep' | 'role' | 'carrier'>;
  /** How many screens wait for keys. */
  readonly heeding: ReadonlySignal<number>;
  /** Whoever is talked to in place of the sweep. */
  readonly attending: ReadonlySignal<unknown>;
  readonly ear: ReadonlySignal<EarState>;
  readonly go: Signal<KeysGo>;
  readonly now: () => Parameters<typeof currentPrompt>[1];
}

/** How long it stays on the screen that the keys are back, in milliseconds. */
const BACK_SHOWN = 3000;

export function watchKeys({ keyboard, live: { sweep, role, carrier }, heeding, attending, ear, go, now }: World): void {
  const here = signal(keyboard.isHere());
  const phase = computed(() => sweep.value?.phase.name);
  /** What the keys would tell can be told here. */
  const wanted = computed(() => {
    const isSweeping = role.value === 'owner' && phase.value !== undefined && phase.value !== 'finished';
    return heeding.value > 0 && (attending.value !== null || isSweeping);
  });
  let timer: ReturnType<typeof setTimeout> | undefined;

  keyboard.onChange(() => {
    here.value = keyboard.isHere();
  });

  function show(next: KeysGo): void {
    clearTimeout(timer);
    go.value = next;
    if (next === 'back') timer = setTimeout(() => show('here'), BACK_SHOWN);
  }

  /** With what was asked last, which may have been cut short or not been heard. */
  function tellBack(): void {
    carrier.tell({ spoken: words('firstHold').keys.back });
    const state = sweep.peek();
    if (state?.phase.name !== 'dialling' && state?.phase.name !== 'judging') return;
    carrier.tellNext({ spoken: promptInWords(currentPrompt(state, now())).spoken });
  }

  effect(() => {
    const isWanted = wanted.value;
    const isHere = here.value;
    const before = go.peek();
    if (!isWanted) return show('here');
    if (isHere && before === 'elsewhere') {
      show('back');
      tellBack();
    } else if (!isHere && before !== 'elsewhere') {
      show('elsewhere');
      carrier.tell({ spoken: words('firstHold').keys.elsewhere });
    }
  });

  // A person who speaks can still answer; the others lose the hold.
  effect(() => {
    if (phase.value !== 'judging' || go.peek() !== 'elsewhere' || ear.peek() === 'listening') return;
    // The step that ended the hold is carried out first: its end tone.
    queueMicrotask(() => carrier.tellNext({ spoken: words('firstHold').keys.holdAtStake }));
  });
}
