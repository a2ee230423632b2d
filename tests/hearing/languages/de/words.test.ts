// What German speakers say for the words that are taught, in other forms and as a recogniser writes it.
import { expect, test } from 'vitest';
import { GERMAN } from '../../../../src/hearing/languages/de/german.ts';
import { hearingIn, shortly } from '../heard.ts';
import { MOMENTS, wordsAt } from '../moments.ts';

const { heard } = hearingIn(GERMAN);

test.each([
  ['Stabile.', 'solid'],
  ['es war ganz stabil', 'solid'],
  ['ja, das ist stabil', 'solid'],
  ['zögerte', 'delayed'],
  ['das Licht kam verzögert', 'delayed'],
  ['etwas verzögert', 'delayed'],
  ['spät', 'delayed'],
  ['flacker', 'flicker'],
  ['es hat geflackert', 'flicker'],
  ['da war nichts', 'nothing'],
  ['mit ich', 'balanced'],
  ['beide sind gleich', 'balanced'],
  ['gedruckt', 'holding'],
  ['gerückt', 'holding'],
  ['jetzt gedrückt', 'holding'],
  ['an nehmen', 'accept'],
  ['aus lassen', 'skip'],
  ['diesen bitte überspringen', 'skip'],
  ['fort setzen', 'resume'],
  ['das selbe', 'same'],
  ['es hat sich verschoben', 'shifted'],
  ['das ist eingestellt', 'entered'],
  ['nächsten', 'next'],
  ['fern Sicht', 'far view'],
] as const)('"%s" is taken for %s, or asked about', (text, word) => {
  const { say } = GERMAN.words[word];
  for (const { words: allowed } of MOMENTS.filter(({ words }) => words.includes(word))) {
    expect({ text, told: shortly(heard(text, allowed)).replace('?', '') }).toEqual({ text, told: say });
  }
});

test.each([
  ['flackert links', 'flicker', 'left'],
  ['rechts verzögert', 'late', 'right'],
  ['stabil und beide gleich', 'steady', 'balanced'],
] as const)('"%s" is one verdict', (text, light, arrows) => {
  expect(heard(text, wordsAt('holding'))).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict: { light } } });
  expect(heard(text, wordsAt('holding'))).toMatchObject({ input: { verdict: { arrows } } });
});
