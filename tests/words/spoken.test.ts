// Contract of the prompts: short for the ear, exact for the eye, and never a correction without its sign.
import { describe, expect, test } from 'vitest';
import type { NotNow, Prompt } from '../../src/sweep/effect.ts';
import type { CarriedOutcome, Outcome } from '../../src/sweep/end/outcome.ts';
import type { Hold } from '../../src/sweep/hold.ts';
import type { Suggestion } from '../../src/sweep/next/suggestion.ts';
import { moment, seconds, steps } from '../../src/units.ts';
import { isBrief } from '../../src/voice/brief.ts';
import { words } from '../../src/words/catalogue.ts';
import { CARRIED } from '../carriedOutcome.ts';

const { prompt: promptInWords, brief, reason, help } = words('spoken');

const next: Suggestion = {
  value: steps(6),
  reason: {
    because: 'between',
    below: { value: steps(3), light: 'steady', counts: 'in' },
    above: { value: steps(9), light: 'dark', counts: 'out' },
  },
};
const noted: Hold = {
  value: steps(9),
  verdict: { light: 'flicker', arrows: 'left' },
  reading: { counts: 'out', grade: 'flicker', side: 'below' },
  began: moment(0),
  ended: moment(2000),
  by: 'voice',
  heard: 'flicker left',
  predictive: 0.4,
};
const tally = { holds: 9, seconds: seconds(80) };
const interval = { from: 4, to: 6 };
const band: Outcome = {
  found: 'band',
  low: steps(2),
  high: steps(8),
  centre: 5,
  chosen: steps(5),
  other: null,
  interval,
  within: 0.976,
  ends: 'seen',
  tally,
};

const carried: CarriedOutcome = {
  ...CARRIED,
  visible: steps(12),
  aside: { low: steps(-7), high: steps(5) },
  halfWidth: 6.5,
  halfInterval: { from: 6, to: 7.5 },
  tally,
};

const NOT_NOW: readonly NotNow[] = [
  'hold first',
  'hold under way',
  'answer first',
  'off the scale',
  'paused',
  'not paused',
  'finished',
  'no arrows',
  'check focus first',
  'turn first',
  'nothing to check',
  'not offered',
  'nothing to enter',
];

const PROMPTS: readonly Prompt[] = [
  { say: 'opening', next },
  { say: 'next', noted: null, next },
  { say: 'next', noted, next },
  { say: 'too early', left: seconds(2.2) },
  { say: 'too early', left: seconds(0.3) },
  { say: 'did it hold', value: steps(6) },
  { say: 'hold again', value: steps(-4), why: 'unanswered' },
  { say: 'hold again', value: steps(-4), why: 'cut off' },
  { say: 'offer', noted, outcome: band, look: true },
  { say: 'offer', noted: null, outcome: { found: 'nothing', tally }, look: false },
  { say: 'check focus', noted: null, drift: { bayesFactor: 20, afterHold: 5 } },
  ...(['drifting', 'play'] as const).map((rival) => ({ say: 'check focus', noted, drift: { bayesFactor: 20, afterHold: 5 }, rival }) as const),
  ...(['first', 'further', 'other way', 'back'] as const).map((way) => ({ say: 'turn the focus', noted, way, practice: false }) as const),
  { say: 'turn the focus', noted: null, way: 'first', practice: true },
  { say: 'fresh series', next },
  { say: 'undone', next },
  { say: 'nothing to undo' },
  { say: 'paused' },
  { say: 'outcome', outcome: { ...band, low: steps(2), high: steps(7), centre: 4.5, chosen: steps(4), other: steps(5) }, practice: false },
  { say: 'outcome', outcome: { ...band, ends: 'believed' }, practice: false },
  { say: 'outcome', outcome: { found: 'past the limit', side: 'high', visible: steps(10), bound: 15, interval, tally }, practice: false },
  { say: 'outcome', outcome: { found: 'past the limit', side: 'both', visible: null, bound: null, interval, tally }, practice: false },
  { say: 'outcome', outcome: { found: 'beyond the scale', side: 'above', tally }, practice: false },
  { say: 'outcome', outcome: carried, practice: false },
  { say: 'outcome', outcome: { ...carried, centre: 21.5, chosen: steps(20), service: true }, practice: false },
  { say: 'outcome', outcome: { ...carried, visible: null, centre: 28, chosen: steps(20), inside: false, service: true, ends: 'believed' }, practice: false },
  ...NOT_NOW.map((why) => ({ say: 'not now', why }) as const),
];

/** What a person who knows the prompts hears of it, where that is less. */
const briefly = (prompt: Prompt): string | null => (isBrief(prompt) ? brief(prompt) : null);

test.each(PROMPTS.map((prompt) => [prompt.say, prompt] as const))('%s is spoken and written in plain sentences', (_, prompt) => {
  const { spoken, written } = promptInWords(prompt);
  expect(spoken).not.toMatch(/[0-9+\u2212]|undefined|null|NaN/);
  expect(written).not.toMatch(/undefined|null|NaN/);
  for (const text of [spoken, written]) expect(text).toMatch(/^[A-Z+\u2212\d].*[.?]$/);
  for (const text of [spoken, written]) expect(text).not.toMatch(/ {2}|\.\.|,\./);
});

test('what is said between two holds is read in under a second and a half: at most five words', () => {
  const between = PROMPTS.filter(({ say }) => ['next', 'undone', 'too early', 'hold again', 'did it hold'].includes(say));
  const tooLong = between.map((prompt) => promptInWords(prompt).spoken).filter((spoken) => spoken.split(' ').length > 5);
  expect(tooLong).toEqual([]);
});

describe('exact words', () => {
  const spoken = (prompt: Prompt) => promptInWords(prompt).spoken;
  const written = (prompt: Prompt) => promptInWords(prompt).written;

  test('a verdict is read back before the next value', () => {
    expect(spoken({ say: 'next', noted, next })).toBe('Flicker, left. Plus six.');
    expect(written({ say: 'next', noted, next })).toBe('Flicker, left. Set +6: halfway between +3 (steady) and +9 (dark).');
  });

  test('a verdict that makes the holds disagree is read back too', () => {
    const prompt: Prompt = { say: 'check focus', noted, drift: { bayesFactor: 20, afterHold: 5 } };
    expect(spoken(prompt)).toBe('Flicker, left. The holds disagree. Check the focus in live view. Same or shifted?');
    expect(written(prompt)).toMatch(/^Flicker, left\. The last answers do not fit the first 5\. The focus has probably moved\./);
  });

  test('holds that cannot tell a moved focus from a drift say which two', () => {
    const prompt: Prompt = { say: 'check focus', noted: null, drift: { bayesFactor: 20, afterHold: 5 }, rival: 'drifting' };
    expect(spoken(prompt)).toBe('The holds disagree: the focus moved, or the band drifts. Check the focus in live view. Same or shifted?');
    expect(written(prompt)).toContain('The focus has moved, or the band drifts while camera and lens warm: these holds cannot tell which.');
  });

  test('seconds left are never understated', () => {
    expect(spoken({ say: 'too early', left: seconds(2.2) })).toBe('Three more seconds.');
    expect(spoken({ say: 'too early', left: seconds(0.3) })).toBe('One more second.');
  });

  test('an outcome tells the value, how sure it is and the band', () => {
    expect(written({ say: 'outcome', outcome: band, practice: false })).toBe('Enter +5: 97% sure within one step of the centre. The band runs from +2 to +8.');
  });

  test('an even band tells the other value that is as good', () => {
    const outcome: Outcome = { ...band, low: steps(-3), high: steps(2), centre: -0.5, chosen: steps(0), other: steps(-1) };
    expect(written({ say: 'outcome', outcome, practice: false })).toContain('Its centre lies at \u22120.5, between two values: \u22121 is as good.');
  });

  test('a width carried over names its value, or that the pair needs service', () => {
    expect(spoken({ say: 'outcome', outcome: carried, practice: false })).toBe('Plus eighteen. Now focus again in live view.');
    expect(written({ say: 'outcome', outcome: carried, practice: false })).toBe(
      'The value to enter is +18. In sharp focus one end of the band is at +12. Half the width, measured with the focus set aside, puts the centre at about +18 (+17 to +19.5, 95% sure).',
    );
    const beyond = { ...carried, centre: 21.5, chosen: steps(20), service: true };
    expect(spoken({ say: 'outcome', outcome: beyond, practice: false })).toBe(
      'The centre lies beyond plus twenty. The pair needs service. Now focus again in live view.',
    );
    expect(written({ say: 'outcome', outcome: beyond, practice: false })).toContain(
      'At +20, the nearest correction, the light is still steady, but the pair needs service.',
    );
  });

  test('to turn the focus is asked for in one breath, with what to say then', () => {
    expect(spoken({ say: 'turn the focus', noted: null, way: 'first', practice: false })).toBe(
      'In live view, turn the focus ring a little, until just off sharp. Then say shifted.',
    );
  });

  test('a band past the limit tells the bound', () => {
    expect(
      written({ say: 'outcome', outcome: { found: 'past the limit', side: 'high', visible: steps(10), bound: 15, interval, tally }, practice: false }),
    ).toBe('One end of the band is at +10. The other lies past +20, the last correction. The centre is +15 or higher.');
  });
});

test('between is only called halfway where it is', () => {
  expect(reason({ ...next, value: steps(5) })).toBe('between +3 (steady) and +9 (dark)');
});

test('a light that was steady with one arrow is not said to have simply been steady', () => {
  const of = { value: steps(3), light: 'steady', counts: 'out' } as const;
  expect(reason({ value: steps(7), reason: { because: 'beyond', of, side: 'above' } })).toBe('above +3 (steady with one arrow)');
});

test('help lists the words that make sense now', () => {
  expect(help(['holding', 'set', 'undo']).spoken).toBe('You can say: holding, set plus or minus a number, undo.');
});

test('a person who knows the prompts still hears back what was told by voice, and of a key only the next value', () => {
  expect(isBrief({ say: 'next', noted, next })).toBe(false);
  expect(briefly({ say: 'next', noted: { ...noted, by: 'key' }, next })).toBe('Plus six.');
  expect(briefly({ say: 'did it hold', value: steps(6) })).toBe('Steady?');
});

test('a sweep that starts from memory says where the value was, and when', () => {
  const from = { at: moment(Date.UTC(2026, 2, 4)), of: 'situation' } as const;
  const first: Suggestion = { value: steps(6), reason: { because: 'remembered', from } };
  expect(promptInWords({ say: 'opening', next: first })).toEqual({
    spoken: 'Set plus six, where it was in March.',
    written: 'Set +6: where the centre was in March 2026.',
  });
  const elsewhere: Suggestion = { value: steps(6), reason: { because: 'remembered', from: { ...from, of: 'pairing' } } };
  expect(promptInWords({ say: 'opening', next: elsewhere }).spoken).toBe('Set plus six, near where this pair was in March.');
  expect(reason(elsewhere)).toBe('near the centre of this pair in March 2026, at another focal length or distance');
});

test('a test of the focus before the finish says what it is for', () => {
  expect(reason({ value: steps(2), reason: { because: 'unmoved' } })).toBe('to check that the focus has not moved since the first holds');
});

test('before a finish is accepted the live view is asked for, where there is one to look at', () => {
  const offer = { say: 'offer', noted: null, outcome: band } as const;
  expect(promptInWords({ ...offer, look: true }).spoken).toMatch(/ Live view still sharp\? Accept\?$/);
  expect(promptInWords({ ...offer, look: false }).spoken).not.toContain('Live view');
});

test('a trouble is said in one short sentence before the next value, also to a person who knows the prompts', () => {
  const trouble = { trouble: 'hole in the band', bayesFactor: 400, from: steps(3), to: steps(4) } as const;
  const prompt = { say: 'next', noted, next, trouble } as const;
  expect(promptInWords(prompt).spoken).toBe('Flicker, left. The band has a gap. Plus six.');
  expect(isBrief({ ...prompt, noted: { ...noted, by: 'key' } })).toBe(false);
});

test('a finish that is offered for a trouble says the trouble, and asks', () => {
  const trouble = { trouble: 'never lights', bayesFactor: 400, alike: 8, of: 8 } as const;
  const prompt = { say: 'offer', noted: null, outcome: { found: 'nothing', tally }, look: true, trouble } as const;
  expect(promptInWords(prompt).spoken).toBe('The light never comes on. Accept?');
});
