// Spanish: numbers as they are heard, of a correction, a lens or a serial number.
import type { SaidNumbers } from '../heardLanguage.ts';
import { sayWhole } from './say.ts';

const plainly = (words: string): string => words.normalize('NFD').replace(/\p{M}/gu, '');

/** An aperture may begin with one of these: "cincuenta uno coma cuatro" is a lens of 50 mm. */
const APERTURES = [1, 2, 4];

/** "Treinta cinco", "treintaicinco", "veinte y cinco", "diez y seis"; "veintiún" before what is counted. */
function belowHundred(whole: number): readonly string[] {
  if (whole < 16 || whole % 10 === 0) return [sayWhole(whole)];
  const [ten, one] = [sayWhole(whole - (whole % 10)), sayWhole(whole % 10)];
  const ways = [sayWhole(whole), `${ten} y ${one}`];
  if (whole > 20 && !APERTURES.includes(whole % 10)) ways.push(`${ten} ${one}`);
  if (whole > 30) ways.push(`${ten}i${one}`, `${ten} i ${one}`);
  else ways.push(`${whole < 20 ? 'dieci' : 'veinti'} ${one}`);
  return one === 'uno' ? ways.flatMap((way) => [way, way.replace(/uno$/, 'un'), way.replace(/uno$/, 'ún')]) : ways;
}

/** "Ciento y" before what follows a hundred; "doscientas" of what is feminine. */
function heads(hundreds: number): readonly string[] {
  if (hundreds === 100) return ['ciento', 'ciento y'];
  const said = sayWhole(hundreds);
  return [said, said.replace(/os$/, 'as')];
}

function also(whole: number): readonly string[] {
  if (whole >= 1000) return [plainly(sayWhole(whole))];
  const [hundreds, rest] = [whole - (whole % 100), whole % 100];
  const all =
    hundreds === 0 ? belowHundred(rest) : heads(hundreds).flatMap((head) => (rest === 0 ? [head] : belowHundred(rest).map((said) => `${head} ${said}`)));
  // What asks the logbook comes without accents.
  return [...new Set([...all, ...all.map(plainly)])];
}

export const NUMBERS: SaidNumbers = {
  say: sayWhole,
  also,
  zeros: [],
  point: 'coma',
  // "A", "e", "o", "u" and "y" are words.
  letter: /^[b-df-np-tv-xz]$/,
  // "1.º" and "1.ª".
  ordinals: ['o', 'a', 'er', 'ro', 'ra', 'do', 'da', 'to', 'ta'],
};
