// What every input means in every phase, as it was: words, lights and arrows, and each press of the one switch by when it went down and
// what was asked; what is understood; and how the switch tells its presses apart to the millisecond.
import { describe, expect, test } from 'vitest';
import type { Arrows } from '../../src/sweep/storedVerdict.ts';
import { currentPrompt } from '../../src/sweep/currentPrompt.ts';
import { heeded } from '../../src/sweep/heeded.ts';
import { WORDS, type Asked, type Input, type Meaning, type Press } from '../../src/sweep/inputs.ts';
import { inputOf, lightWith, meaning } from '../../src/sweep/meaning.ts';
import { lookAgainAt, moveSwitch, RELEASED, type Contact, type OneSwitch } from '../../src/sweep/oneSwitch.ts';
import { pressed } from '../../src/sweep/pressed.ts';
import type { Phase, SweepState } from '../../src/sweep/state.ts';
import { isStanding, isToBeEntered, isUndoableBefore, PRESSES, pressesIn, understood } from '../../src/sweep/understood.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { moment, steps } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';
import { after, begin, inPhase, later } from './staged.ts';

const PHASES = Object.keys(PRESSES) as Phase['name'][];
const said = (one: Meaning): string => oneLine(one.means === 'events' ? one.events.map((event) => Object.values(event)) : Object.values(one));
const variants = (name: Phase['name']): readonly SweepState[] => {
  const state = inPhase(name);
  const practice = { ...state, plan: { ...state.plan, practice: { seed: 1 }, arrows: 'absent' as const } };
  return [state, practice, { ...state, journal: state.journal.slice(0, 1) }];
};

describe.each(PHASES)('while %s', (name) => {
  test('words, keys and buttons', () => {
    const inputs: readonly Input[] = [
      ...WORDS.filter((word) => word !== 'set').map((word) => inputOf(word, 'key', 'heard')),
      lightWith('solid', 'left', 'voice'),
      { told: 'set', value: steps(3), by: 'pointer', heard: null },
      ...(['none', 'balanced'] as Arrows[]).map((arrows): Input => ({ told: 'arrows', arrows, by: 'voice', heard: 'b' })),
    ];
    const rows = variants(name).slice(0, 2).map((state) => inputs.map((input) => said(meaning(input, state, later(20)))).join('; '));
    const offered = variants(name).map((state) => oneLine([heeded(understood(state).words), understood(state).presses.map((one) => Object.values(one)), isToBeEntered(state), isUndoableBefore(state)]));
    const prompts = [10, 12, 15, 30].map((second) => Object.values(currentPrompt(inPhase(name), later(second))).slice(0, 2)).map(oneLine);
    expect([rows, offered, prompts]).toMatchSnapshot();
  }); // prettier-ignore

  test('presses of the one switch', () => {
    const downs = [9.999, 10, 10.3, 10.699, 10.7, 12].map(later);
    const rows = variants(name).flatMap((state) =>
      (['short', 'double', 'long'] as Press[]).flatMap((press) =>
        [...new Set<Phase['name']>([name, 'dialling', 'holding', 'offered'])].map((during) =>
          downs.map((downAt) => said(pressed({ told: 'press', press, during, downAt }, state, later(13), null))).join(' '),
        ),
      ),
    );
    expect(rows).toMatchSnapshot();
  });
});

test('a question about the hold under way stands only for that hold, and turns two presses into undo', () => {
  const holding = begin(after(inPhase('dialling'), { did: 'chose', at: later(5), value: steps(2), by: 'key' }), 10);
  const states = [holding, inPhase('holding'), inPhase('judging'), inPhase('dialling')];
  const askeds: readonly (Asked | null)[] = [null, { hold: later(10), about: 'kept' }, { hold: later(9), about: 'kept' }, { hold: later(10), about: 'double' }];
  const rows = states.flatMap((state) =>
    askeds.map((asked) => {
      const double = { told: 'press', press: 'double', during: 'holding', downAt: later(10.5) } as const;
      const presses = pressesIn(state, 'holding', asked).map(({ means }) => means);
      return oneLine([presses, asked && isStanding(asked, state), isUndoableBefore(state), said(pressed(double, state, later(11), asked)), said(meaning(double, state, later(11), asked))]);
    }),
  ); // prettier-ignore
  expect(rows).toMatchSnapshot();
});

test('the switch tells short, double and long apart to the millisecond', () => {
  const random = seededRandom(4);
  const gaps = [1, 150, 399, 400, 401, 599, 600, 601];
  const rows = PHASES.map((during) => {
    let state: OneSwitch = RELEASED;
    let at = 1000;
    return Array.from({ length: 60 }, () => {
      at += gaps[Math.floor(random() * gaps.length)] ?? 1;
      const move = (['down', 'up', 'none', 'up', 'down'] as const)[Math.floor(random() * 5)] ?? 'none';
      const contact: Contact = move === 'down' ? { move, at: moment(at), during } : { move, at: moment(at) };
      const told = moveSwitch(state, contact);
      state = told.state;
      return [move, state.is, lookAgainAt(state) ?? '', ...told.presses.map(({ press, downAt }) => `${press} ${downAt}`)].join(' ');
    }).join(', ');
  });
  expect(rows).toMatchSnapshot();
});
