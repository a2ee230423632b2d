// What is made of series put together by chance, kept so that no change of it goes unnoticed; and what is exactly at a bound.
import { expect, test } from 'vitest';
import { checkEntered } from '../../../src/photographs/checkEntered.ts';
import { joinCentres } from '../../../src/photographs/joinedCentre.ts';
import { bracketParts, type BracketPart } from '../../../src/photographs/series/bracketParts.ts';
import { readBracket } from '../../../src/photographs/series/bracketSeries.ts';
import { CHECK_PARTS, checkParts, type CheckPart } from '../../../src/photographs/series/checkParts.ts';
import { readCheck } from '../../../src/photographs/series/checkSeries.ts';
import { examplesOf } from '../../../src/photographs/series/examples.ts';
import { outOfSeries } from '../../../src/photographs/series/outOfSeries.ts';
import { firstTaken, proofOfBracket, proofOfCheck, proofOfOne } from '../../../src/photographs/series/proofsOf.ts';
import { inOrderTaken, type SeriesPicture } from '../../../src/photographs/series/seriesPicture.ts';
import { turnsOf } from '../../../src/photographs/series/turns.ts';
import { around } from '../../../src/photographs/withInterval.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { failed, got } from '../../../src/result.ts';
import { millimetres, moment, steps } from '../../../src/units.ts';
import { libraryWith } from '../../logbook/libraryWith.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { kept } from '../../kept/kept.ts';
import { focusAt, seriesPicture } from './seriesPictures.ts';

const { kit } = libraryWith({
  bodies: [{ id: 'b', model: 'Model B', serial: '1' }, { id: 'c', model: 'Model C', serial: null }],
  lenses: [{ id: 'l', model: 'Model L', serial: '2' }, { id: 'm', model: 'Model L', serial: '3' }, { id: 'k', model: 'Model K' }],
  converters: [{ id: 'x' }],
  situations: [{ id: 's' }, { id: 't', body: 'c', lens: 'm', focalLength: 87 }, { id: 'u', lens: 'k', converter: 'x' }],
}); // prettier-ignore
const line = (value: unknown): string => JSON.stringify(sevenDigits(value));
const random = seededRandom(71);
const one = <Value>(...values: readonly Value[]): Value => values[Math.floor(values.length * random() ** 2)]!;
const picture = (place: number): SeriesPicture => {
  const camera = one(false, false, false, true)
    ? null
    : {
        bodyModel: one('Model B', 'Model C', null),
        bodySerial: one('1', null, '9'),
        lensModel: one('Model L', 'Model K', null),
        lensSerial: one('2', null, '3', '7'),
        focalLength: one(millimetres(85), millimetres(87), null, millimetres(70)),
        aperture: one(1.8, 1.85, null, 2.8),
        taken: one(moment(60_000 * (place % 3)), moment(0), null),
      };
  const told = seriesPicture(place, { camera, error: one<number | null>(place % 4, 3 * place, null), scale: one(5, 5.2, 5.4, 4), name: one(`P${place}.JPG`, `p${place % 4}.nef`, `${place}a9.x`, `p0${place}`) }); // prettier-ignore
  const frame = one({ width: 4000, height: 6000 }, { width: 6000, height: 3000 }, { width: 3000, height: 2000 });
  const reading = one(told.reading, told.reading, told.reading, { ...told.reading, target: failed({ is: 'two prints' as const }) }, { target: failed({ is: 'no print' as const }), focus: failed({ is: 'no target' as const }) }); // prettier-ignore
  return { ...told, frame, reading };
};
const all = Array.from({ length: 120 }, (_, set) => Array.from({ length: 1 + (set % 7) }, (_each, place) => picture(place + (set % 5))));

test('what does not belong, in which order the rest was taken, and when the first', () => {
  const told = () =>
    all.map((pictures, set) => {
      const situation = [null, 's', 't', 'u', 'gone'][set % 5]!;
      const { taken, out } = turnsOf(pictures, kit, situation);
      return [
        firstTaken(pictures),
        ...inOrderTaken(pictures).map(({ id }) => id),
        '|',
        ...taken.map(({ id }) => id),
        '|',
        ...out.values(),
        '|',
        ...outOfSeries(pictures, kit, situation).values(),
      ].join(' ');
    });
  expect(kept(told)).toMatchSnapshot();
});

test('names of letters and numbers, whichever comes first', () => {
  const order = (...names: readonly string[]) =>
    inOrderTaken(names.map((name, at) => ({ ...seriesPicture(at, { camera: null }), name })))
      .map(({ name }) => name)
      .join(' ');
  expect([order('a', '1'), order('1', 'a'), order('a2', 'a2b', 'a10'), order('b', 'a'), order('a', 'b'), order('1', '-'), order('-', '1')]).toEqual([
    '1 a',
    '1 a',
    'a2 a2b a10',
    'a b',
    'a b',
    '- 1',
    '- 1',
  ]);
  // What differs by the share exactly is alike.
  const lengths = (...each: readonly number[]) =>
    outOfSeries(
      each.map((one, at) => seriesPicture(at, { error: at, camera: { focalLength: millimetres(one) } })),
      kit,
      null,
    ).size;
  expect([lengths(100, 100, 97), lengths(100, 100, 96.9)]).toEqual([0, 1]);
});

test('which turn each picture took, whatever the person says', () => {
  const chance = seededRandom(72);
  const corrections = [0, 4, -4, 8, 0, 4].map((each) => steps(each));
  const told = () =>
    Array.from({ length: 90 }, (_, set) => {
      const order = Array.from({ length: 1 + (set % 9) }, (_each, at) => `p${at}`);
      const by = <Part>(...parts: readonly Part[]) => new Map(order.flatMap((id): [string, Part][] => (chance() < 0.3 ? [[id, parts[Math.floor(parts.length * chance())]!]] : [])));
      const bracket = bracketParts(order, corrections.slice(set % 4), by<BracketPart>('live view', 'left out', steps(0), steps(4), steps(8), steps(99)));
      return `${[...bracket.values()].join(' ')} | ${[...checkParts(order, by<CheckPart>(...CHECK_PARTS)).values()].join(' ')}`;
    }); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
  // What is no turn of the bracket takes none.
  expect([...bracketParts(['a', 'b', 'c', 'd'], corrections, new Map([['c', steps(99)]])).values()]).toEqual(['live view', 0, 99, 4]);
});

/** Each with a depth of its own; in some focus is not told. */
const shots = (errors: readonly (number | null)[]): SeriesPicture[] =>
  errors.map((error, place) => {
    const told = seriesPicture(place, { error });
    const front = millimetres(30 + place);
    return error === null ? told : { ...told, reading: { ...told.reading, focus: got({ ...focusAt(error, 1 + place / 9), depth: { front, behind: 'infinite', total: 'infinite' }, step: millimetres(2 + place) }) } }; // prettier-ignore
  });
const partsOf = (pictures: readonly SeriesPicture[]) => checkParts(pictures.map(({ id }) => id), new Map()); // prettier-ignore

test('checks read from pictures, what is kept of them, and which are looked at again', () => {
  const told = () =>
    [[], [0], [null, 3], [0, null, 3], [1, 9], [1, 9, 8, 11, 10], [null, 9, null, 11, 10, 14], [0, 44, 41, 48], [2, -30, -33, -28, null, -31]].map((errors) => {
      const pictures = shots(errors);
      const series = readCheck(pictures, partsOf(pictures));
      const proof = series && proofOfCheck(series, steps(3), firstTaken(pictures));
      return line([series && [series.shots, series.reference, series.depth, series.step, series.check.verdict], proof, [-40, 0, 10, 50].map((error) => examplesOf(pictures, partsOf(pictures), error))]); // prettier-ignore
    });
  expect(kept(told)).toMatchSnapshot('checks');
  const few = shots([4, 9, 2]);
  const ways = (...parts: readonly (CheckPart | null)[]) => new Map(few.flatMap(({ id }, at): [string, CheckPart][] => (parts[at] ? [[id, parts[at]]] : [])));
  expect(examplesOf(few, ways(null, 'near', 'live view'), 4)).toEqual({ reference: 'p2', shot: 'p1' });
  expect(examplesOf(few, ways('live view', 'left out', null), 2)).toEqual({ reference: 'p0', shot: null });
  // One way alone has no difference, and none that is not finite is kept.
  const near = readCheck(shots([0, 9, 8, 10, 9]), new Map(['p1', 'p2', 'p3', 'p4'].map((id): [string, CheckPart] => [id, 'near'])))!;
  expect(kept(() => proofOfCheck(near, steps(0), null))).toMatchSnapshot('one way');
  const endless = { ...near, check: { ...near.check, nearLessFar: around(1, Infinity) } };
  expect(proofOfCheck(endless, steps(0), null)).toBeNull();
  expect(proofOfCheck({ ...near, check: { ...near.check, bias: around(1, Infinity) } }, steps(0), null)).toBeNull();
  expect(line(proofOfOne(focusAt(4), moment(7)))).toMatchSnapshot('one picture');
});

test('brackets read from pictures, and what is kept of them', () => {
  const corrections = [-4, 0, 4, 8, -4, 0].map((each) => steps(each));
  const told = () =>
    [[0, -21, 1, 18, 41, -19, 0], [null, -21, 1, 18, 41], [1, null, 3], [0, -20, 0.5, 22, null, -19, 2], []].map((errors) => {
      const pictures = shots(errors);
      const parts = bracketParts(pictures.map(({ id }) => id), corrections, new Map()); // prettier-ignore
      return [null, around(0, 3), around(9, 1)].map((band) => {
        const series = readBracket(pictures, parts, band);
        const measured = series?.measured;
        return line([series && [series.shots.map(({ id }) => id), series.reference, measured?.ok ? proofOfBracket(series, measured.value, moment(3)) : measured]]); // prettier-ignore
      });
    });
  expect(kept(told)).toMatchSnapshot();
  const pictures = shots([0, -21, 1, 18, 41, -19, 0]);
  const series = readBracket(pictures, bracketParts(pictures.map(({ id }) => id), corrections, new Map()), around(0, 3))!; // prettier-ignore
  if (!series.measured.ok) throw new Error('These shots have a centre.');
  for (const without of [{ band: null }, { joined: null }])
    expect(proofOfBracket(series, { ...series.measured.value, ...without }, null)).toMatchObject({ joined: null });
});

test('centres that are as sure keep a doubt; one shot alone to one side asks for two more at least', () => {
  const agreed = joinCentres({ value: 0, low: -1, high: 1 }, { value: 1, low: 0, high: 2 });
  expect(kept(() => agreed)).toMatchSnapshot('agreed');
  const alone = [12, 10, 14, 11, 13, 12].map((value, at) => ({ thrown: at === 0 ? ('near' as const) : ('far' as const), error: around(value, 17.6) }));
  const depth = { front: millimetres(4), behind: millimetres(4), total: millimetres(8) };
  expect([-1, 0, 1, 2].map((less) => checkEntered(alone, around(less, 0), depth)?.verdict)).toMatchSnapshot('alone');
});
