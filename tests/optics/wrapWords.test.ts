// Contract of lines of words where nothing measures them.
import { expect, test } from 'vitest';
import { lettersIn, wrapWords } from '../../src/optics/print/wrapWords.ts';

test('words are parted at spaces, and one that no line holds is cut', () => {
  expect(wrapWords('a line of words', 10, 55)).toEqual(['a line of', 'words']);
  expect(wrapWords('abcdefghijklmno p', 10, 55)).toEqual(['abcdefghij', 'klmno p']);
});

test('signs as wide as high count so, and are parted without spaces, but not before what closes nor within a word', () => {
  expect(lettersIn('手前')).toBeCloseTo(2 / 0.55, 6);
  const lines = wrapWords('鮮明な範囲：手前186 mm、奥194 mm', 10, 90);
  expect(lines.join('').replaceAll(' ', '')).toBe('鮮明な範囲：手前186mm、奥194mm');
  expect(lines.length).toBeGreaterThan(1);
  for (const line of lines) {
    expect(lettersIn(line) * 5.5).toBeLessThanOrEqual(90);
    expect(line).not.toMatch(/^[、。：]/u);
  }
  expect(wrapWords('このターゲット', 10, 60)).toEqual(['この', 'ターゲット']);
});

test('no words are no lines', () => {
  expect(wrapWords('', 10, 60)).toEqual([]);
});
