// Listening for words while a sweep, its result or a set-up walk stands here, once the person has said yes to it. What it takes to listen
// is read then, and not at all where nobody does.
import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { HEARD } from '../../hearing/languages.ts';
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Deaf } from '../../voice/deaf.ts';
import { readWords } from '../../words/catalogue.ts';
import { inUse } from '../../words/inUse.ts';
import type { LibraryStore } from './library.ts';
import type { Listener } from './listener.ts';
import type { Live } from './live.ts';
import type { Ports } from './ports.ts';
import type { Attendant, EarState } from './session.ts';
import type { Told } from './told.ts';
import type { Mishaps } from './troubles.ts';

export interface Hearing {
  readonly state: ReadonlySignal<EarState>;
  /** Why nothing is heard although it is listened for. */
  readonly deaf: ReadonlySignal<Deaf | null>;
  /** Tries again at once; `here`: also where another window listens. */
  again(here: boolean): void;
  /** Deaf until the returned function is called, and a moment longer. */
  deafen(): () => void;
  /** Opens and closes the ear from now on. */
  start(live: Live, library: LibraryStore, told: Told, attending: ReadonlySignal<Attendant | null>, onNextLens: (name: string) => void): void;
  /** The one switch; true when it is the switch that opens the ear, and tells nothing else. */
  contact(move: 'down' | 'up'): boolean;
}

export function createHearing(ports: Pick<Ports, 'ear' | 'takes' | 'now' | 'tones'>, troubles: Mishaps): Hearing {
  const state = signal<EarState>('off');
  const deaf = signal<Deaf | null>(null);
  let listener: Listener | null = null;

  return {
    state,
    deaf,
    again: (here) => listener?.again(here),
    deafen: () => listener?.deafen() ?? (() => undefined),
    contact: (move) => listener?.contact(move) ?? false,
    start(live, library, told, attending, onNextLens) {
      const voice = computed(() => {
        // To the end: at a result "entered", "next" and "undo" are still heard.
        const isSweeping = live.role.value === 'owner' && live.sweep.value !== null;
        const { voice: chosen } = library.settings.value;
        return (isSweeping || attending.value) && chosen.listen !== 'off' ? chosen : null;
      });
      const stop = effect(() => {
        if (voice.value) void read();
      });
      async function read(): Promise<void> {
        stop();
        try {
          const [{ createListener }, first] = await Promise.all([import('./listener.ts'), HEARD[inUse.peek().voice].sounded(), readWords('voice')]);
          const language = signal(first);
          follow(language);
          listener = createListener({ ...ports, ear: await ports.ear(), troubles, language, live, library, told, attending, voice, state, deaf, onNextLens });
        } catch {
          deaf.value = 'unread';
        }
      }
      /** The language may be changed while it is listened for. */
      function follow(language: Signal<HeardLanguage>): void {
        effect(() => {
          void HEARD[inUse.value.voice].sounded().then(
            (next) => (language.value = next),
            () => (deaf.value = 'unread'),
          );
        });
      }
    },
  };
}
