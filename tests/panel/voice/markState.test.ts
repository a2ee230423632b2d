// Contract of the mark's state: one of a few, and never a claim that the ear hears when it does not.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markStateOf, type Known } from '../../../src/panel/voice/markState.ts';
import { stageOf } from '../../../src/panel/voice/stage.ts';
import { words } from '../../../src/words/en/voice.ts';

const { deaf: DEAF, deafSaid: DEAF_SAID, mark: MARK, markDeaf: MARK_DEAF } = words;

const KNOWN: Known = { listen: 'browser', wish: 'none', ear: 'off', deaf: null, inTheWay: null, role: 'owner', sweeping: false };
const EARS = ['off', 'unavailable', 'needs permission', 'asking', 'starting', 'listening', 'deaf while speaking', 'opens when pressed', 'waiting'] as const;
const REASONS = Object.keys(DEAF) as (keyof typeof DEAF)[];

const known = fc.record<Known>({
  listen: fc.constantFrom('off', 'own', 'here', 'browser'),
  wish: fc.constantFrom('none', 'own', 'here', 'browser'),
  ear: fc.constantFrom(...EARS),
  deaf: fc.option(fc.constantFrom(...REASONS)),
  inTheWay: fc.option(fc.constantFrom(...REASONS)),
  role: fc.constantFrom('owner', 'follower', 'asking'),
  sweeping: fc.boolean(),
});

describe('the mark', () => {
  test('says “listening” only where voice is on, the ear hears and nothing is in its way', () => {
    fc.assert(
      fc.property(known, (one) => {
        const listens = markStateOf(one).is === 'listening';
        expect(listens).toBe(one.listen !== 'off' && one.ear === 'listening' && one.deaf === null);
      }),
    );
  });

  test('never claims to be on without the person’s yes', () => {
    fc.assert(fc.property(known, (one) => void expect(one.listen !== 'off' || ['off', 'begun', 'asking', 'deaf'].includes(markStateOf(one).is)).toBe(true)));
  });

  test.each(REASONS)('names “%s” as the reason whatever the ear does meanwhile', (why) => {
    for (const ear of EARS) expect(markStateOf({ ...KNOWN, ear, deaf: why })).toEqual({ is: 'deaf', why });
  });

  test('tells before a sweep what will be in the way, and in a window that only follows that the other one listens', () => {
    expect(markStateOf(KNOWN)).toEqual({ is: 'ready' });
    expect(markStateOf({ ...KNOWN, inTheWay: 'blocked' })).toEqual({ is: 'deaf', why: 'blocked' });
    expect(markStateOf({ ...KNOWN, role: 'follower', sweeping: true })).toEqual({ is: 'deaf', why: 'another window' });
  });

  test('has no two states with the same words, and none longer than its place', () => {
    const words = [...Object.values(MARK), ...Object.values(MARK_DEAF)];
    expect(new Set(words).size).toBe(words.length);
    for (const word of words) expect(word.length).toBeLessThanOrEqual(12);
  });

  test('says of every reason what to do, and says it aloud in one breath', () => {
    for (const why of REASONS) {
      expect(DEAF[why]).toMatch(/^[A-Z].*[.]$/u);
      expect(DEAF_SAID[why].length).toBeLessThanOrEqual(70);
    }
  });
});

describe('the sheet', () => {
  const voice = { listen: 'off', wish: 'none' } as const;
  const at = { voice, proposed: 'browser', isDownloadable: false, allowed: 'prompt', taught: 0, wanted: 7 } as const;

  test('goes from the offer through the question to complete, and by taught words through the lesson', () => {
    expect(stageOf(at)).toEqual({ at: 'offered', by: 'browser', isDownloadable: false });
    expect(stageOf({ ...at, voice: { ...voice, wish: 'browser' } })).toEqual({ at: 'asking' });
    expect(stageOf({ ...at, voice: { ...voice, wish: 'browser' }, allowed: 'granted' })).toEqual({ at: 'complete', by: 'browser' });
    const own = { ...at, voice: { ...voice, wish: 'own' }, allowed: 'granted' } as const;
    expect(stageOf({ ...own, taught: 3 })).toEqual({ at: 'teaching', taught: 3 });
    expect(stageOf({ ...own, taught: 7 })).toEqual({ at: 'complete', by: 'own' });
  });

  test('a refusal leaves voice off', () => {
    expect(stageOf({ ...at, voice: { ...voice, wish: 'browser' }, allowed: 'denied' })).toEqual({ at: 'refused' });
  });

  test('is complete only after the person’s yes and the browser’s', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('none', 'own', 'here', 'browser'),
        fc.constantFrom('granted', 'prompt', 'denied', 'unknown'),
        fc.integer({ min: 0, max: 7 }),
        (wish, allowed, taught) => {
          const { at: stage } = stageOf({ ...at, voice: { listen: 'off', wish }, allowed, taught });
          expect(stage === 'complete').toBe(wish !== 'none' && allowed === 'granted' && (wish !== 'own' || taught >= 7));
        },
      ),
    );
  });
});
