// Takes in what the person tells: finds its meaning, moves the sweep, and shows back what it became.
import { signal, type Signal } from '@preact/signals';
import type { Asked, Input } from '../../sweep/inputs.ts';
import { meaning } from '../../sweep/meaning.ts';
import { refused } from '../../sweep/step.ts';
import type { SweepEvent } from '../../sweep/event.ts';
import { understood } from '../../sweep/understood.ts';
import type { Moment } from '../../units.ts';
import { saidAndShown, words } from '../../words/catalogue.ts';
import type { Became, Ending } from './ending.ts';
import type { Live } from './live.ts';
import { heardAs } from './heardAs.ts';
import type { Heard } from './session.ts';

export interface Told {
  /** What was told last, and what became of it. */
  readonly latest: Signal<Heard | null>;
  /** What the person was asked last about a press. */
  readonly asked: Signal<Asked | null>;
  take(input: Input): void;
}

/** What is told that does not move the sweep. */
interface Beside {
  readonly ending: () => Ending | null;
  readonly nextLens: () => void;
  /** Switches the far view, and says whether it is on now. */
  readonly switchFarView: () => boolean;
}

export function createTold({ sweep, role, carrier, dispatch, tellWhere }: Live, now: () => Moment, { ending, nextLens, switchFarView }: Beside): Told {
  const latest = signal<Heard | null>(null);
  const asked = signal<Asked | null>(null);

  function take(input: Input): void {
    const state = sweep.peek();
    if (!state) return;
    const at = now();
    const became = (what: () => string): void => {
      latest.value = heardAs(() => words('sweep').heard.told(input), what, 'by' in input ? input.by : 'switch', at);
    };
    const becameKept = (marked: Became | undefined): void => void marked?.kept.then(() => became(marked.words));
    const moved = (event: SweepEvent): void => {
      const step = dispatch(event);
      if (!step) return;
      const refusal = step.effects.some((effect) => effect.do === 'keep') ? undefined : step.effects.find((effect) => effect.do === 'say');
      const { holds } = step.state;
      became(() => (refusal ? words('spoken').prompt(refusal.prompt).written : words('sweep').heard.became(event, holds.at(-1) ?? null)));
    };
    // Whoever only watches may do so from afar.
    if (input.told === 'far view') {
      const isOn = switchFarView();
      return became(() => words('session').farView[isOn ? 'on' : 'off']);
    }
    if (role.peek() !== 'owner') return became(() => words('session').became['not here']);
    const meant = meaning(input, state, at, asked.peek());
    switch (meant.means) {
      case 'events':
        return meant.events.forEach(moved);
      case 'not now':
        carrier.carry(refused(state, meant.why).effects, at);
        return became(() => words('spoken').prompt({ say: 'not now', why: meant.why }).written);
      case 'asked':
        asked.value = meant.about;
        // Few need its words twice.
        void import('./asking.ts').then(({ ask }) => ask(meant.about, sweep, carrier));
        return became(() => words('session').became['asked back']);
      case 'entered':
        return becameKept(ending()?.mark(state));
      case 'undo': {
        // A mark goes before the finish.
        const unmarked = ending()?.takeBack(state);
        return unmarked ? becameKept(unmarked) : moved({ did: 'undid', at, by: 'by' in input ? input.by : 'switch' });
      }
      case 'next lens':
        return nextLens();
      case 'repeat':
        tellWhere(state);
        return became(() => words('session').became['said again']);
      case 'help':
        carrier.tell(saidAndShown('spoken', (say) => say.help(understood(state).words)));
        return became(() => words('session').became.help);
      case 'far view':
      case 'nothing':
        return;
    }
  }

  return { latest, asked, take };
}
