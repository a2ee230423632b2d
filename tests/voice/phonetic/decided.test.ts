// Contract of what is taken, asked about and left: by how near the nearest is over all guesses, and how far the next. In the made-up language, where
// a guess further down costs 0.05, a known misspelling 0.09 and a stray word 0.25.
import { describe, expect, test } from 'vitest';
import type { Word } from '../../../src/sweep/inputs.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { INVENTED } from '../../hearing/languages/invented.ts';

const { match } = matcherFor(INVENTED);
const ALLOWED: readonly Word[] = ['undo', 'holding', 'skip', 'left', 'right', 'balanced', 'flicker', 'solid', 'set'];
/** What became of these guesses, and of what word; a dash is a guess that is like nothing. */
function told(guesses: string, allowed: readonly Word[] = ALLOWED): string {
  const texts = guesses.split(', ').map((text) => ({ text: text === '-' ? 'rr' : text }));
  const found = match(texts, allowed, true);
  return found.is === 'unclear' ? `unclear ${found.best?.words ?? 'all'}` : found.is === 'taken' ? `taken ${found.words}` : 'ignored';
}

test('a guess that is like nothing is ignored', () => {
  expect([told('-'), told('-, -')]).toEqual(['ignored', 'ignored']);
});

describe('the nearest', () => {
  test('is taken up to 0.17, asked about up to 0.32, and else left', () => {
    expect([told('fezu'), told('-, -, -, fezu'), told('-, -, -, -, fezu'), told('-, -, -, -, -, -, fezu'), told('-, -, -, -, -, -, -, fezu')]).toEqual([
      'taken fezu',
      'taken fezu',
      'unclear fezu',
      'unclear fezu',
      'ignored',
    ]);
    expect([told('chwany'), told('-, chwany'), told('-, -, chwany'), told('fezu drako')]).toEqual([
      'taken wanimo',
      'taken wanimo',
      'unclear wanimo',
      'unclear fezu',
    ]);
  });

  test('comes nearer by 0.02 for each guess that agrees, three at most', () => {
    expect([told('-, -, -, -, fezu, fezu'), told('-, -, -, -, fezu, fezu, fezu')]).toEqual(['unclear fezu', 'taken fezu']);
    // 0.25 less three times 0.02 is 0.19, however many agree.
    expect(told('-, -, -, fezu drako, fezu drako, fezu drako, fezu drako, fezu drako')).toBe('ignored');
    expect(told('fezu drako, fezu drako, fezu drako, fezu drako, fezu drako, fezu drako')).toBe('unclear fezu');
  });

  test('that is an arrow is taken up to 0.1', () => {
    expect([told('-, -, gevo'), told('-, -, -, gevo')]).toEqual(['taken gevo', 'unclear gevo']);
  });

  test('is looked for in eight guesses', () => {
    expect(told('-, -, -, -, -, -, fezu, fezu, fezu')).toBe('unclear fezu');
    expect(told('-, -, -, -, -, -, -, fezu, fezu')).toBe('ignored');
  });
});

describe('the next', () => {
  test('must be 0.07 behind', () => {
    expect([told('fezu, vipo'), told('fezu, -, vipo'), told('-, fezu, vipo'), told('-, fezu, -, vipo')]).toEqual([
      'unclear fezu',
      'taken fezu',
      'unclear fezu',
      'taken fezu',
    ]);
  });

  test('must be 0.12 behind where it would flip a reading, unless the first is exact', () => {
    expect([told('-, gevo, -, suna'), told('-, gevo, -, -, suna'), told('-, gevo, -, papako')]).toEqual(['unclear gevo', 'taken gevo', 'taken gevo']);
    expect([told('gevo, -, suna'), told('gevo, suna')]).toEqual(['taken gevo', 'unclear gevo']);
    expect([told('-, papako, -, drelu', [...ALLOWED, 'lopsided']), told('-, zizi gevo, -, zizi suna'), told('-, zizi gevo, -, -, zizi suna')]).toEqual([
      'unclear papako',
      'unclear zizi gevo',
      'taken zizi gevo',
    ]);
  });

  test('value must be 0.12 behind', () => {
    expect([told('-, kotu dupi foso, -, kotu dupi joto'), told('-, kotu dupi foso, -, -, kotu dupi joto')]).toEqual(['unclear kotu +4', 'taken kotu +4']);
  });
});

test('a guess that is not sure enough by itself is asked about', () => {
  expect(match([{ text: 'fezu', doubtful: true }], ALLOWED, true)).toMatchObject({ is: 'unclear', best: { words: 'fezu' } });
  expect(match([{ text: 'rr', doubtful: true }], ALLOWED, true)).toEqual({ is: 'ignored' });
});

test('"set" with a number and no sign is meant, and either way could be', () => {
  expect([told('kotu foso'), told('eh kotu foso'), told('kotu foso', ['undo'])]).toEqual(['unclear all', 'unclear all', 'ignored']);
});

test('before the person has stopped only what is spelt as it is taught counts', () => {
  expect(match([{ text: 'fezu' }], ALLOWED, false)).toMatchObject({ is: 'taken', words: 'fezu' });
  expect(match([{ text: 'chwany' }], ALLOWED, false)).toEqual({ is: 'ignored' });
});
