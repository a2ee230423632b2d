// Listening for words while a sweep or a set-up walk runs here: the ear is open only then, and only after the person said yes to it.
import { computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import type { Ear } from '../../platform/ear/ear.ts';
import { understood } from '../../sweep/understood.ts';
import type { Candidate, match as Match } from '../../voice/matching.ts';
import { UNREAD } from '../../unread.ts';
import { LANGUAGE } from '../../voice/vocabulary/en.ts';
import type { Library } from './library.ts';
import type { Live } from './live.ts';
import type { Ports } from './ports.ts';
import type { EarState, Listener } from './session.ts';
import type { Told } from './told.ts';
import type { Troubles } from './troubles.ts';

export interface Hearing {
  readonly state: ReadonlySignal<EarState>;
  readonly ear: Ear;
  /** Opens and closes the ear from now on. */
  start(live: Live, library: Library, told: Told, attending: ReadonlySignal<Listener | null>): void;
}

const TROUBLE = 'ear';

export function createHearing({ ear: createEar, openMicrophonePage }: Pick<Ports, 'ear' | 'openMicrophonePage'>, troubles: Troubles): Hearing {
  const state = signal<EarState>('off');
  let take: (candidates: readonly Candidate[], final: boolean) => boolean = () => false;
  /** Read before the ear opens, and not at all where nobody listens. */
  let match: typeof Match | null = null;

  const ear = createEar({
    language: LANGUAGE,
    onState: (next) => {
      state.value = next;
    },
    onHeard: (candidates, final) => take(candidates, final),
    onTrouble(trouble) {
      if (!trouble) troubles.clear(TROUBLE);
      else troubles.add(TROUBLE, trouble.sentence, trouble.needsPage ? { label: 'Open the microphone page', run: openMicrophonePage } : null);
    },
  });

  return {
    state,
    ear,
    start({ sweep, role }, { settings }, told, attending) {
      take = (candidates, final) => {
        const now = sweep.peek();
        const listener = attending.peek();
        const allowed = listener?.words ?? (now && understood(now).words);
        if (!allowed || !match) return false;
        const found = match(candidates, allowed, final);
        if (found.is === 'taken') (listener ?? told).take(found.input);
        if (found.is === 'unclear') told.unclear(candidates[0]?.text ?? '');
        return found.is !== 'ignored';
      };
      const wanted = computed(
        () =>
          settings.value.voice.listen === 'browser' &&
          (attending.value !== null || (role.value === 'owner' && sweep.value !== null && sweep.value.phase.name !== 'finished')),
      );
      const open = async (): Promise<void> => {
        try {
          ({ match } = await import('../../voice/matching.ts'));
        } catch {
          troubles.add(TROUBLE, UNREAD);
          return;
        }
        if (wanted.peek()) ear.open();
      };
      effect(() => {
        if (wanted.value) void open();
        else ear.close();
      });
    },
  };
}
