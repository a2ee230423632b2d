// Contracts of the kit at its limits: what is saved, what is put away, what a body cannot keep apart.
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { isRetired, put, retire } from '../../src/kit/change.ts';
import { Body, Converter, Distance, FocalLength, Lens, newBody, newConverter, newLens } from '../../src/kit/kit.ts';
import { usualDistance } from '../../src/kit/lengths.ts';
import { FocalRange, widestAt, zooms } from '../../src/kit/lens.ts';
import { warningsFor, warningsOf } from '../../src/kit/warnings.ts';
import { millimetres, moment } from '../../src/units.ts';
import { libraryWith, type Parts } from '../logbook/libraryWith.ts';

const NOW = moment(1000);
const fits = (schema: v.GenericSchema, ...values: unknown[]): boolean[] => values.map((value) => v.safeParse(schema, value).success);

describe('what a form takes', () => {
  test('focal lengths of 4 to 2,000 mm, distances of 50 mm to 500 m', () => {
    expect(fits(FocalLength, 3.9, 4, 2000, 2001)).toEqual([false, true, true, false]);
    expect(fits(Distance, 49, 50, 500_000, 500_001)).toEqual([false, true, true, false]);
    expect(usualDistance(millimetres(85))).toBe(4250);
  });

  test('a range of focal lengths that is not turned round', () => {
    expect(fits(FocalRange, { from: 24, to: 70 }, { from: 50, to: 50 }, { from: 70, to: 24 })).toEqual([true, true, false]);
  });

  test('widest apertures of 0.5 to 64, converters of 0.5 to 4 times', () => {
    const widest = (from: number, to: number) => ({ ...newLens('l', 'Orrin', NOW), widest: { from, to } });
    expect(fits(Lens, widest(0.5, 64), widest(0.49, 2), widest(2, 65))).toEqual([true, false, false]);
    expect(fits(Converter, ...[0.4, 0.5, 4, 4.1].map((factor) => newConverter('c', 'Orrin 1.4', factor, NOW)))).toEqual([false, true, true, false]);
  });

  test('sensors of 4 to 70 mm, and bodies that remember 1 to 1,000 lenses', () => {
    const body = newBody('b', 'Velde', NOW);
    const sensor = (width: number, height: number) => ({ ...body, sensor: { width, height } });
    expect(fits(Body, sensor(4, 70), sensor(3.9, 24), sensor(36, 71))).toEqual([true, false, false]);
    expect(fits(Body, ...[0, 1, 1000, 1001, 1.5, null].map((remembers) => ({ ...body, remembers })))).toEqual([false, true, true, false, false, true]);
  });
});

describe('the widest aperture', () => {
  const lens = (focal: Lens['focal'], widest: Lens['widest']): Lens => ({ ...newLens('l', 'Orrin', NOW), focal, widest });
  const zoom = lens({ from: millimetres(100), to: millimetres(200) }, { from: 4, to: 6 });

  test('lies between the ends of a zoom in proportion, and at them beyond', () => {
    expect([50, 100, 125, 200, 400].map((focalLength) => widestAt(zoom, focalLength))).toEqual([4, 4, 4.5, 6, 6]);
  });

  test('is that of a lens that does not zoom, and not known where nobody wrote it', () => {
    expect(widestAt(lens({ from: millimetres(85), to: millimetres(85) }, { from: 1.8, to: 1.8 }), 50)).toBe(1.8);
    expect([widestAt(lens(null, { from: 2, to: 3 }), 50), widestAt(lens(null, null), 50)]).toEqual([2, null]);
    expect([zooms(zoom), zooms(lens({ from: millimetres(85), to: millimetres(85) }, null)), zooms(lens(null, null))]).toEqual([true, false, false]);
  });
});

describe('a change', () => {
  const { kit } = libraryWith({ bodies: [{ id: 'a', changed: 7 }, { id: 'b', changed: 5 }], converters: [{ id: 'c' }] }); // prettier-ignore

  test('leaves every other piece as it is', () => {
    const changed = put(kit, 'bodies', { ...kit.bodies[1]!, name: 'Second' }, moment(5), NOW);
    expect(changed).toMatchObject({ ok: true, value: { bodies: [{ id: 'a', changed: 7, name: 'Velde M1' }, { id: 'b', changed: 1000, name: 'Second' }] } }); // prettier-ignore
  });

  test('is later than the one before, by the least where the clock stands', () => {
    const at = (now: number) => put(kit, 'bodies', kit.bodies[0]!, moment(7), moment(now));
    expect([at(7), at(8), at(9)].map((result) => result.ok && result.value.bodies[0]?.changed)).toEqual([8, 8, 9]);
  });

  test('of a situation wants body, lens and converter there; one without a converter needs none', () => {
    const situation = { ...kit.situations[0]!, id: 't', body: 'a', converter: null };
    expect(put(kit, 'situations', situation, null, NOW).ok).toBe(true);
    expect(put(kit, 'situations', { ...situation, converter: 'c' }, null, NOW).ok).toBe(true);
    expect(put(kit, 'situations', { ...situation, lens: 'no' }, null, NOW)).toEqual({ ok: false, fault: { is: 'situation lacks', what: 'lens' } });
    expect(retire(kit, 'bodies', 'no', NOW, NOW)).toEqual({ ok: false, fault: { is: 'gone', list: 'bodies' } });
  });

  test.each([
    ['its body', { bodies: [{ id: 'b', retired: 5 }] }],
    ['its lens', { lenses: [{ id: 'l', retired: 5 }] }],
    ['its converter', { converters: [{ id: 'c', retired: 5 }], situations: [{ id: 's', converter: 'c' }] }],
    ['itself', { situations: [{ id: 's', retired: 5 }] }],
  ] as const)('a situation is put away with %s', (_, parts: Parts) => {
    const own = libraryWith(parts).kit;
    expect(isRetired(own)(own.situations[0]!)).toBe(true);
    const other = libraryWith({ ...parts, bodies: [...(parts.bodies ?? [{ id: 'b' }]), { id: 'x' }], lenses: [...(parts.lenses ?? [{ id: 'l' }]), { id: 'y' }], situations: [{ id: 't', body: 'x', lens: 'y' }] }).kit; // prettier-ignore
    expect(isRetired(other)(other.situations[0]!)).toBe(false);
  });
});

describe('warnings', () => {
  const COPIES = { lenses: [{ id: 'l', serial: '1' }, { id: 'm', serial: '2' }], situations: [{ id: 's' }, { id: 't', lens: 'm' }] }; // prettier-ignore
  const warned = (parts: Parts, ...entered: string[]) => warningsOf(libraryWith(parts).kit, new Set(entered));

  test('of copies that share a value: surely, perhaps, or not', () => {
    const of = (copies: string) => warned({ ...COPIES, bodies: [{ id: 'b', copies }] });
    expect(of('share a value')).toMatchObject([{ about: 'shared value', surely: true, lenses: [{ id: 'l' }, { id: 'm' }] }]);
    expect(of('not known')).toMatchObject([{ about: 'shared value', surely: false }]);
    expect(of('told apart')).toEqual([]);
    expect(warned({ lenses: [{ id: 'l' }], situations: [{ id: 's' }, { id: 't' }] })).toEqual([]);
    expect(warned({ ...COPIES, lenses: [{ id: 'l', model: 'ONE  x' }, { id: 'm', model: 'one X' }] })).toHaveLength(1); // prettier-ignore
    expect(warned({ ...COPIES, lenses: [{ id: 'l', model: 'one' }, { id: 'm', model: 'two' }] })).toEqual([]); // prettier-ignore
  });

  test('leave out what is put away, and a body that is', () => {
    expect(warned({ ...COPIES, situations: [{ id: 's' }, { id: 't', lens: 'm', retired: 5 }] })).toEqual([]);
    expect(warned({ ...COPIES, bodies: [{ id: 'b', retired: 5 }] })).toEqual([]);
  });

  test('of a memory from two places left on; copies that share a value share a place, converters do not', () => {
    const lenses = ['k', 'l', 'm'].map((id) => ({ id, name: id }));
    const situations = lenses.map(({ id }) => ({ id: `s${id}`, lens: id }));
    const left = (remembers: number | null, ...entered: string[]) =>
      warned({ lenses, situations, bodies: [{ id: 'b', remembers }] }, ...entered).map((warning) => (warning.about === 'memory' ? warning.left : null));
    expect([left(3), left(2), left(4, 'sk', 'sl'), left(5, 'sk', 'sl'), left(2, 'sk', 'sl', 'sm'), left(null, 'sk')]).toEqual([[], [2], [2], [], [0], []]);
    const shared = (copies: string) =>
      warned({ ...COPIES, bodies: [{ id: 'b', remembers: 2, copies }] }, 's', 't').flatMap((warning) => (warning.about === 'memory' ? [warning.left] : []));
    expect([shared('share a value'), shared('told apart')]).toEqual([[1], [0]]);
    const converted = warned(
      { converters: [{ id: 'c' }], situations: [{ id: 's' }, { id: 't', converter: 'c' }], bodies: [{ id: 'b', remembers: 3 }] },
      's',
      't',
    );
    expect(converted).toMatchObject([{ about: 'memory', left: 1, lenses: [{ id: 'l' }] }]);
  });

  test('of a situation are those of its body: of the memory all, of copies its own lens’s', () => {
    const library = libraryWith({ ...COPIES, lenses: [...COPIES.lenses, { id: 'n', name: 'Other' }], situations: [...COPIES.situations, { id: 'u', lens: 'n' }], bodies: [{ id: 'b', remembers: 1 }, { id: 'x' }] }); // prettier-ignore
    const all = warningsOf(library.kit, new Set());
    const about = (at: number) => warningsFor(library.kit.situations[at]!, all).map((warning) => warning.about);
    expect([about(0), about(2)]).toEqual([['shared value', 'memory'], ['memory']]);
    expect(warningsFor({ ...library.kit.situations[0]!, body: 'x' }, all)).toEqual([]);
  });
});
