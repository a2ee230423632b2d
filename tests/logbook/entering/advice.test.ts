import { expect, it } from 'vitest';
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { adviceOnEntering } from '../../../src/logbook/entering/advice.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { libraryWith, sweepRecord, T0 } from '../libraryWith.ts';

const subject = (situation: string) => ({
  situation,
  body: 'Velde M1',
  lens: 'Orrin 24–70 f/2.8',
  focalLength: situation.startsWith('wide') ? 24 : 70,
  distance: 2500,
});
const situation = (id: string, converter: string | null = null) => ({ id, focalLength: subject(id).focalLength, distance: 2500, converter });

function advise(zoomStore: 'one' | 'two', records: readonly unknown[]) {
  const library = libraryWith({
    bodies: [{ id: 'b', zoomStore }],
    lenses: [{ id: 'l', focal: { from: 24, to: 70 } }],
    converters: [{ id: 'c' }],
    situations: [situation('wide'), situation('tele'), situation('tele behind', 'c')],
    records,
  });
  const shelf = shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
  return adviceOnEntering({ body: 'b', lens: 'l' }, library.kit, shelf, { by: 'worst share' });
}

const wide = sweepRecord('w', T0, -8, -2, { subject: subject('wide') });
const tele = sweepRecord('t', T0, 4, 10, { subject: subject('tele') });

it('a body with one value gets one for both ends, with the trade when none serves both', () => {
  const [bare] = advise('one', [wide, tele])?.places ?? [];
  expect(bare).toMatchObject({ two: null, missingEnd: null, one: { value: 1 } });
  expect(bare?.one?.trade.map(({ value }) => value)).toEqual([-5, 7]);
});

it('a body with two values gets one for each end, and asks for the end that was not measured', () => {
  const [bare] = advise('two', [wide, tele])?.places ?? [];
  expect([bare?.two?.wide.value, bare?.two?.tele.value]).toEqual([-5, 7]);
  expect(advise('two', [tele])?.places[0]).toMatchObject({ two: null, missingEnd: 24, one: { value: 7 } });
});

it('what is behind a converter has a place of its own, and what has no band is named with its reason', () => {
  const past = { found: 'past the limit', side: 'high', visible: 14, bound: 17, interval: { from: 17, to: 22 }, tally: { holds: 9, seconds: 90 } };
  const places = advise('one', [wide, tele, sweepRecord('p', T0, 0, 0, { subject: subject('tele behind'), outcome: past })])?.places ?? [];
  expect(places.map(({ converter, evidence }) => [converter?.id ?? null, evidence.length])).toEqual([
    [null, 2],
    ['c', 0],
  ]);
  expect(places[1]?.uncounted).toMatchObject([{ id: 'tele behind', why: 'past the limit' }]);
  expect(places[1]?.one).toBeNull();
});
