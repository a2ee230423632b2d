// From a recording of words to their takes, as if each had been taught.
import { Frames } from '../../../src/voice/ownWords/bands.ts';
import { Endpoints } from '../../../src/voice/ownWords/endpoints.ts';
import type { Stretch } from '../../../src/voice/ownWords/pieces.ts';
import { takeOf, type Take } from '../../../src/voice/ownWords/take.ts';
import type { Recording } from './stream.ts';

/** The longest stretch that overlaps each word said. */
export function stretchesFor({ samples, said }: Recording, rate: number): (Stretch | null)[] {
  const endpoints = new Endpoints();
  const stretches: Stretch[] = [];
  for (const frame of new Frames(rate).push(samples)) {
    const sounding = endpoints.push(frame);
    if (sounding?.sign === 'ended') stretches.push(...sounding.pieces.map(({ stretch }) => stretch));
  }
  return said.map(({ begins, ends }) => {
    const over = stretches.filter((one) => one.begins * 0.01 < ends && one.ends * 0.01 > begins);
    return over.sort((a, b) => b.frames.length - a.frames.length)[0] ?? null;
  });
}

export function takesFrom(teaching: Recording, rate: number): Take[] {
  return stretchesFor(teaching, rate).flatMap((stretch, index) => (stretch === null ? [] : [takeOf(teaching.said[index]!.label, stretch)]));
}
