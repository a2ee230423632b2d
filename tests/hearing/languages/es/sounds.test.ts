// Contract of how Spanish sounds: its letters give the sounds that it has.
import { expect, test } from 'vitest';
import { SPANISH } from '../../../../src/hearing/languages/es/spanish.ts';
import { SYMBOLS } from '../../../../src/hearing/languages/sounds.ts';
import { WORDS } from '../../../../src/sweep/inputs.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { bareWordsIn } from '../../../../src/voice/phonetic/spokenText.ts';
import { hearingIn } from '../heard.ts';

const pronounce = pronouncer(SPANISH.pronunciation);
const sounds = (phrase: string): string => bareWordsIn(SPANISH)(phrase).map(pronounce).join(' ');
const { apart: distance } = hearingIn(SPANISH);

// Sounds as espeak-ng 1.51 (a general-purpose synthesiser) gives them for Spanish, in the letters of sounds.ts; its rule for 1500 of the
// commonest words gave the same but for names and letters spelt out.
test.each([
  ['firme', 'fI@mx'],
  ['parpadea', 'po@podXo'],
  ['izquierda', 'i41$X@do'],
  ['derecha', 'dx@X2o'],
  ['parejas', 'po@Xhos'],
  ['deshacer', 'dxso4X@'],
  ['pausa', 'pKso'],
  ['prosigue', 'p@wsIgx'],
  ['guardado', 'g#o@dOdw'],
  ['siguiente', 'sig$Xntx'],
  ['atrás', 'ot@Os'],
  ['ayuda', 'o$Vdo'],
  ['quince', '1In4x'],
  ['seis', 'sEs'],
  ['nueve', 'n#Xbx'],
  ['veintidós', 'bentidWs'],
  ['llega', '$Xgo'],
  ['genio', 'hXn$w'],
  ['huevo', '#Xbw'],
  ['acción', 'O14$wn'],
  ['enviar', 'xmb$O@'],
])('"%s" is sounded by its letters', (word, phones) => {
  expect(sounds(word)).toBe(phones);
});

test('every rule and every listed word is written in known sounds', () => {
  const known = new Set(Object.values(SYMBOLS).flatMap((letter) => [letter, letter.toUpperCase()]));
  const { letters, endings, words } = SPANISH.pronunciation;
  const written = [...letters, ...endings]
    .map(([, phones]) => phones)
    .concat(
      words
        .trim()
        .split('\n')
        .map((line) => line.split(' ')[1] ?? '?'),
    );
  expect([...written.join('')].filter((letter) => !known.has(letter))).toEqual([]);
});

test.each([
  ['baca', 'vaca'],
  ['haya', 'halla'],
  ['hola', 'ola'],
  ['echo', 'hecho'],
  ['queso', 'keso'],
  ['gitano', 'jitano'],
])('"%s" and "%s" sound the same', (one, other) => {
  expect(distance(one, other)).toBe(0);
});

test.each([
  ['caza', 'casa'],
  ['doce', 'dose'],
  ['cien', 'sien'],
])('"%s" and "%s" are as near as they are to those who make no difference', (one, other) => {
  expect(distance(one, other)).toBeLessThan(0.15);
});

test('the far view is like nothing else that is said', () => {
  const others = WORDS.filter((word) => word !== 'far view').flatMap((word) => {
    const { say, also, misheard } = SPANISH.words[word];
    return [say, ...also, ...misheard];
  });
  expect(others.filter((other) => distance('en grande', other) <= 0.5)).toEqual([]);
});

test.each(['halla', 'haya', 'hola'])('"%s" sounds the same whatever was heard before it', (word) => {
  const after = pronouncer(SPANISH.pronunciation);
  for (let letters = 1; letters < word.length; letters++) after(word.slice(0, letters));
  for (const listed of WORDS.flatMap((one) => [SPANISH.words[one].say, ...SPANISH.words[one].also])) bareWordsIn(SPANISH)(listed).forEach(after);
  expect(after(word)).toBe(pronouncer(SPANISH.pronunciation)(word));
});
