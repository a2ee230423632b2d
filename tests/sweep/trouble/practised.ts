// A person who sweeps on the practice camera, told exactly what its light does: by the values the panel names, or by values
// of their own. Asked about the focus they say that it has not moved, unless it is for them to find out.
import type { Oddity } from '../../../src/sweep/oddity.ts';
import { practiceVerdict } from '../../../src/practice/lamp.ts';
import type { SweepEvent } from '../../../src/sweep/event.ts';
import type { Effect } from '../../../src/sweep/effect.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { transition } from '../../../src/sweep/transition.ts';
import { steps } from '../../../src/units.ts';
import { later, opened } from '../staged.ts';

export interface Practised {
  readonly state: SweepState;
  readonly effects: readonly Effect[];
}

interface Terms {
  readonly arrows: boolean;
  readonly own: readonly number[];
  readonly looks: boolean;
}

const PATIENCE = 40;

const known = new Map<string, Practised>();

/** Swept once for all tests that ask for the same. */
export function practised(seed: number, oddity: Oddity | null, { arrows = false, own = [] as readonly number[], looks = true } = {}): Practised {
  const key = JSON.stringify([seed, oddity, arrows, own, looks]);
  const sweep = known.get(key) ?? swept(seed, oddity, { arrows, own, looks });
  known.set(key, sweep);
  return sweep;
}

function swept(seed: number, oddity: Oddity | null, { arrows, own, looks }: Terms): Practised {
  const plan = { scale: USUAL_SCALE, arrows: arrows ? 'right-is-up' : 'absent', practice: { seed, ...(oddity && { oddity }) } } as const;
  let { state, effects } = openSweep(opened(plan)) as { state: SweepState; effects: readonly Effect[] };
  const did = (event: SweepEvent): void => {
    const step = transition(state, event);
    state = step.state;
    effects = [...effects, ...step.effects];
  };
  for (let nth = 1; nth <= PATIENCE && (nth <= own.length || state.phase.name === 'dialling'); nth++) {
    const value = own[nth - 1] ?? ('next' in state.phase ? state.phase.next.value : 0);
    const at = 20 * nth;
    const verdict = practiceVerdict(state.plan, steps(value), nth);
    if (!verdict) throw new Error('not on the practice camera');
    did({ did: 'began', at: later(at), value: steps(value), by: 'key' });
    did({ did: 'ran', at: later(at + 5) });
    did({ did: 'judged', at: later(at + 6), verdict, by: 'key', heard: null });
    if (looks && state.phase.name === 'checking') did({ did: 'checked', at: later(at + 9), focus: 'unmoved', by: 'key' });
  }
  return { state, effects };
}

export const namesOf = ({ state }: Practised): string[] => state.troubles.map(({ trouble }) => trouble);
