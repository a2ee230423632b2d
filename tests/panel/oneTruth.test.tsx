// @vitest-environment happy-dom
// Contract of every screen of a sweep and of every prompt: where a trouble is named nothing is called sure, and the trouble is
// said once. Over whole sweeps of practice cameras with every oddity, and with none.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { practiceVerdict } from '../../src/practice/lamp.ts';
import { Oddity } from '../../src/sweep/oddity.ts';
import { findingOf } from '../../src/sweep/finding.ts';
import { currentPrompt } from '../../src/sweep/currentPrompt.ts';
import { words } from '../../src/words/catalogue.ts';
import { TROUBLE_SAID } from '../../src/words/en/troubleSaid.ts';
import { moment, steps } from '../../src/units.ts';
import { practised } from '../sweep/trouble/practised.ts';
import { FakeSession, PLAN } from './fakeSession.ts';
import { partsRead, phase, show, text } from './show.tsx';

afterEach(cleanup);

/** Every screen of a sweep is drawn, which takes long on a busy computer. */
const WHOLE_SWEEP = 30_000;

/** What claims certainty: a share that is sure, an interval, enough. */
const CERTAIN = /\d\s?% sure|95\s?%|\benough (for \w+ care|is known)\b|\binterval\b/i;
/** The names and sentences of troubles, as any screen or prompt gives them. */
const NAMES = [
  'Flickers everywhere',
  'Dark everywhere',
  'Steady everywhere',
  'A gap in the band',
  'Arrows contradict the light',
  'Has the focus moved?',
  'The focus moved',
];
const TROUBLED = [...NAMES, ...Object.values(TROUBLE_SAID), 'The holds disagree', 'do not fit the first'];

const ODDITIES = [null, ...Oddity.options] as const;
/** With these the light holds at no value, or at all. */
const NO_BAND: readonly (Oddity | null)[] = ['flickers everywhere', 'never lights', 'lights everywhere'];

function holdsToOneTruth(what: string): void {
  const said = text();
  const troubles = TROUBLED.filter((one) => said.toLowerCase().includes(one.toLowerCase()));
  if (troubles.length > 0 && CERTAIN.test(said)) throw new Error(`${what}: ${troubles.join(', ')} beside ${CERTAIN.exec(said)?.[0]}: ${said}`);
  const twice = NAMES.filter((name) => said.split(name).length > 2);
  if (twice.length > 0) throw new Error(`${what}: said twice: ${twice.join(', ')}: ${said}`);
}

describe.each(ODDITIES)('a practice camera with this wrong: %s', (oddity) => {
  test.each([4])(
    'seed %i: no screen, from the first hold to the result, says two things',
    async (seed) => {
      const arrows = oddity === 'arrows turn round' ? 'right-is-up' : 'absent';
      const session = await show(new FakeSession({ plan: { ...PLAN, arrows, practice: { seed, ...(oddity && { oddity }) } } }).open());
      let offered = 0;
      for (let nth = 1; nth <= 24 && offered < 2; nth++) {
        const state = session.sweep.value;
        if (state === null || !('next' in state.phase)) break;
        const { value } = state.phase.next;
        const verdict = practiceVerdict(state.plan, steps(value), nth);
        if (!verdict || verdict.light === 'untold' || verdict.arrows === 'lopsided') break;
        const { light, arrows: seen } = verdict;
        await act(() => void session.hold(light, value, seen));
        await partsRead();
        holdsToOneTruth(`hold ${nth}, ${phase()}`);
        if (phase() === 'checking') await act(() => session.input({ told: nth % 2 ? 'unmoved' : 'moved', by: 'key', heard: null }));
        if (phase() === 'offered') {
          offered += 1;
          if (offered < 2) await act(() => session.input({ told: 'go on', by: 'key', heard: null }));
        }
        holdsToOneTruth(`after hold ${nth}, ${phase()}`);
      }
      await act(() => session.input({ told: phase() === 'offered' ? 'accept' : 'finish', by: 'key', heard: null }));
      await partsRead();
      expect(phase()).toBe('finished');
      holdsToOneTruth('the result');
      const state = session.sweep.value;
      const found = state?.phase.name === 'finished' ? findingOf(state.phase.outcome, state.troubles) : null;
      expect(screen.queryByLabelText('Value to enter') !== null).toBe(found?.is === 'sure');
      expect(document.querySelectorAll('button.chief')).toHaveLength(1);
      const reveals = screen.getByRole('region', { name: 'The practice camera' }).textContent ?? '';
      expect(/practice camera (was|were) made .*The sweep (named it|did not meet it)/.test(reveals)).toBe(oddity !== null);
      expect(NO_BAND.includes(oddity) && /(is|was) steady from/.test(reveals)).toBe(false);
    },
    WHOLE_SWEEP,
  );

  test.each([1, 2])('seed %i: no prompt says two things', (seed) => {
    const { state, effects } = practised(seed, oddity, { arrows: oddity === 'arrows turn round' });
    const prompts = effects.flatMap((effect) => (effect.do === 'say' ? [effect.prompt] : []));
    for (const prompt of [...prompts, currentPrompt(state, moment(0))]) {
      const { spoken, written } = words('spoken').prompt(prompt);
      for (const said of [spoken, written]) {
        expect({ said, both: CERTAIN.test(said) && TROUBLED.some((one) => said.includes(one)) }).toMatchObject({ both: false });
      }
    }
    const last = words('spoken').prompt(currentPrompt(state, moment(0)));
    const doubted = state.phase.name === 'offered' && findingOf(state.phase.outcome, state.troubles).is === 'doubtful';
    expect(doubted && CERTAIN.test(last.written)).toBe(false);
  });
});

test('every trouble has checks, and so a chief button that leads to them', () => {
  for (const checks of Object.values(words('trouble').checks)) expect(checks.length).toBeGreaterThan(2);
});
