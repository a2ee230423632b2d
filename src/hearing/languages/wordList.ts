// A list of words with their sounds, one a line. The build leaves out what a line has in common with the one above it, which is
// most of a long list in the order of the alphabet (front coding: Witten, Moffat and Bell 1999, chapter 4, from memory).
import type { Phones } from './sounds.ts';

/** In front of a word that was shortened, and of its sounds: how many letters of the line above they begin with. */
const SHARED = /^(\d)(\S*) (\d)(\S*)$/;

/** `word sounds`, one a line, as it is written or as the build shortened it. */
export function listedWords(list: string): [word: string, sounds: Phones][] {
  let [word, sounds] = ['', ''];
  return list
    .trim()
    .split('\n')
    .map((line) => {
      const [, letters, ending, phones, rest] = SHARED.exec(line) ?? [];
      const whole = line.split(' ');
      word = letters === undefined ? (whole[0] ?? '') : word.slice(0, Number(letters)) + ending;
      sounds = phones === undefined ? (whole[1] ?? '') : sounds.slice(0, Number(phones)) + rest;
      return [word, sounds];
    });
}
