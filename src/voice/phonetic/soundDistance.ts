// How far apart two phrases sound: the cheapest way to turn one row of sounds into the other (Wagner and Fischer 1974),
// as a share of how much there is to hear.
import type { Phones } from '../../hearing/languages/sounds.ts';
import { costOfSounds, loss } from './phones.ts';
import { lossBeside } from './weakSpeech.ts';

// Sounds are single letters below 128: what each pair costs is kept in one table.
const LETTERS = 128;
const confusions = new Float64Array(LETTERS * LETTERS).fill(-1);

function confusionOf(one: number, other: number): number {
  const at = one * LETTERS + other;
  let cost = confusions[at] ?? 0;
  if (cost < 0) confusions[at] = cost = costOfSounds(String.fromCharCode(one), String.fromCharCode(other));
  return cost;
}

/** How much there is to hear, and what each sound costs to miss where it stands. */
interface Hearable {
  readonly weight: number;
  readonly losses: Float32Array;
}

const REMEMBERED = 2000;
const remembered = new Map<Phones, Hearable>();

function hearable(phones: Phones): Hearable {
  let known = remembered.get(phones);
  if (known) return known;
  const losses = Float32Array.from(phones, (phone, at) => lossBeside(phones[at - 1], phone, phones[at + 1]));
  known = { weight: [...phones].reduce((sum, phone) => sum + loss(phone), 0), losses };
  if (remembered.size >= REMEMBERED) remembered.clear();
  remembered.set(phones, known);
  return known;
}

/** How much there is to hear. */
export const weight = (phones: Phones): number => hearable(phones).weight;

let last = new Float32Array(64);
let row = new Float32Array(64);

/** Hardly any distance is less than this: what one has more than the other must be lost, where speech is weak at this share. */
export const leastDistance = (a: number, b: number): number => (0.7 * Math.abs(a - b)) / Math.max(0.5, (a + b) / 2);

/** 0: the same sounds; about 1: nothing in common. */
export function soundDistance(a: Phones, b: Phones): number {
  const size = b.length + 1;
  if (last.length < size) [last, row] = [new Float32Array(2 * size), new Float32Array(2 * size)];
  const [{ losses: missedOfA, weight: heavyA }, { losses: missedOfB, weight: heavyB }] = [hearable(a), hearable(b)];
  last[0] = 0;
  for (let j = 1; j < size; j++) last[j] = (last[j - 1] ?? 0) + (missedOfB[j - 1] ?? 0);
  for (let i = 0; i < a.length; i++) {
    const phone = a.charCodeAt(i);
    const lost = missedOfA[i] ?? 0;
    row[0] = (last[0] ?? 0) + lost;
    for (let j = 1; j < size; j++) {
      const other = b.charCodeAt(j - 1);
      const missed = Math.min((last[j] ?? 0) + lost, (row[j - 1] ?? 0) + (missedOfB[j - 1] ?? 0));
      row[j] = Math.min(missed, (last[j - 1] ?? 0) + confusionOf(phone, other));
    }
    [last, row] = [row, last];
  }
  return (last[size - 1] ?? 0) / Math.max(0.5, (heavyA + heavyB) / 2);
}
