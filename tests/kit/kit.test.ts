import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { isRetired, put, retire } from '../../src/kit/change.ts';
import { Body, Lens, newBody, newLens, Situation, subjectIn } from '../../src/kit/kit.ts';
import { widestAt, zooms } from '../../src/kit/lens.ts';
import { warningsOf } from '../../src/kit/warnings.ts';
import { words } from '../../src/words/catalogue.ts';
import { moment } from '../../src/units.ts';
import { libraryWith } from '../logbook/libraryWith.ts';

const NOW = moment(1000);

describe('kit', () => {
  const { kit } = libraryWith({ bodies: [{ id: 'b', name: 'Velde M1', changed: 5 }] });
  const body = kit.bodies[0]!;

  it('takes a new piece and a change, and stamps both with the time', () => {
    const added = put(kit, 'lenses', newLens('l-2', 'Orrin 35 f/2', moment(0)), null, NOW);
    expect(added.ok && added.value.lenses.map(({ id, changed }) => [id, changed])).toEqual([
      ['l', 0],
      ['l-2', 1000],
    ]);
    const renamed = put(kit, 'bodies', { ...body, name: 'The old one' }, body.changed, NOW);
    expect(renamed.ok && renamed.value.bodies).toMatchObject([{ name: 'The old one', changed: 1000 }]);
  });

  it('refuses a change made from a state that another window has changed meanwhile', () => {
    const fault = { is: 'changed elsewhere', list: 'bodies' };
    expect(put(kit, 'bodies', body, moment(4), NOW)).toEqual({ ok: false, fault });
    expect(put(kit, 'bodies', body, null, NOW)).toEqual({ ok: false, fault });
    expect(put(kit, 'bodies', newBody('gone', 'x', NOW), moment(4), NOW)).toEqual({ ok: false, fault });
  });

  it('never stamps a change as older than the one before it, even when the clock was set back', () => {
    const changed = put(kit, 'bodies', body, body.changed, moment(2));
    expect(changed.ok && changed.value.bodies[0]?.changed).toBe(6);
  });

  it('asks for the body, lens and converter of a situation first', () => {
    const situation = { ...kit.situations[0]!, id: 's-2' };
    expect(put(kit, 'situations', { ...situation, body: 'no' }, null, NOW)).toMatchObject({
      fault: { is: 'situation lacks', what: 'body' },
    });
    expect(put(kit, 'situations', { ...situation, converter: 'no' }, null, NOW)).toMatchObject({
      fault: { is: 'situation lacks', what: 'converter' },
    });
    expect(put(kit, 'situations', situation, null, NOW)).toMatchObject({ ok: true });
  });

  it('retires a piece without taking it out, and brings it back', () => {
    const away = retire(kit, 'lenses', 'l', NOW, NOW);
    if (!away.ok) throw new Error(away.fault.is);
    expect(away.value.lenses).toHaveLength(1);
    expect(isRetired(away.value)(kit.situations[0]!)).toBe(true);
    const back = retire(away.value, 'lenses', 'l', null, NOW);
    expect(back.ok && isRetired(back.value)(kit.situations[0]!)).toBe(false);
  });

  it('names a situation by lens, converter and body as they are called now', () => {
    const withConverter = libraryWith({ converters: [{ id: 'c' }], situations: [{ id: 's', converter: 'c' }] }).kit;
    expect(subjectIn(withConverter, withConverter.situations[0]!)).toMatchObject({
      lens: 'Orrin 85 f/1.8 with Orrin 1.4×',
      body: 'Velde M1',
    });
    expect(subjectIn({ ...withConverter, lenses: [], bodies: [] }, withConverter.situations[0]!)).toMatchObject({
      lens: 'Unknown lens with Orrin 1.4×',
      body: 'Unknown body',
    });
  });

  it('names the fault of every field that does not fit', () => {
    const faults = (schema: v.GenericSchema, value: unknown) => v.safeParse(schema, value).issues?.map(({ message }) => message);
    expect(faults(Body, { ...body, name: ' ' })).toEqual(['no name']);
    expect(faults(Body, { ...body, remembers: 0 })).toEqual(['remembers too few']);
    expect(faults(Lens, { ...kit.lenses[0], focal: { from: 70, to: 24 } })).toEqual(['focal lengths turned round']);
    expect(faults(Situation, { ...kit.situations[0], distance: 4 })).toEqual(['no distance']);
  });
});

describe('a lens', () => {
  const lens = {
    ...newLens('l', 'Orrin 24–70', NOW),
    focal: { from: 24, to: 70 },
    widest: { from: 2.8, to: 4 },
  } as Lens;

  it('that zooms has a widest aperture between its ends', () => {
    expect([zooms(lens), widestAt(lens, 24), widestAt(lens, 47), widestAt(lens, 70), widestAt(lens, 200)]).toEqual([true, 2.8, 3.4, 4, 4]);
  });

  it('of which nothing is known has none', () => {
    expect([zooms(newLens('l', 'x', NOW)), widestAt(newLens('l', 'x', NOW), 50)]).toEqual([false, null]);
  });
});

describe('warnings', () => {
  const twoCopies = (copies: string) =>
    libraryWith({
      bodies: [{ id: 'b', copies }],
      lenses: [
        { id: 'one', model: 'Orrin 85', serial: 'A1' },
        { id: 'two', model: 'ORRIN  85', serial: 'A2' },
      ],
      situations: [
        { id: 's-1', lens: 'one' },
        { id: 's-2', lens: 'two' },
      ],
    }).kit;
  const sentences = (kit: ReturnType<typeof twoCopies>, entered: string[] = []) => warningsOf(kit, new Set(entered)).map(words('kit').warning);

  it('say that two copies of one lens share a stored value, or may', () => {
    expect(sentences(twoCopies('share a value'))).toEqual([
      'Velde M1 cannot tell Orrin 85 f/1.8 (A1) and Orrin 85 f/1.8 (A2) apart. They share one stored value, so enter that of the one in use.',
    ]);
    expect(sentences(twoCopies('not known'))[0]).toMatch(/may share one stored value on Velde M1. Look in its manual/);
    expect(sentences(twoCopies('told apart'))).toEqual([]);
  });

  it('say when the memory of a body is nearly full, counting what shares a place once', () => {
    const kit = (remembers: number | null, copies: string) => {
      const lenses = ['1', '2', '3'].map((id) => ({ id, name: `Orrin ${id}`, model: id === '3' ? 'Orrin 2' : null }));
      const situations = lenses.flatMap(({ id }) => [
        { id: `near ${id}`, lens: id },
        { id: `far ${id}`, lens: id, distance: 9000 },
      ]);
      return libraryWith({ bodies: [{ id: 'b', remembers, copies }], lenses, situations }).kit;
    };
    const entered = ['near 1', 'far 1', 'near 2', 'near 3'];
    expect(sentences(kit(6, 'told apart'), entered)).toEqual([]);
    expect(sentences(kit(5, 'told apart'), entered)[0]).toMatch(/remembers 5 lenses, and 2 places are left/);
    expect(sentences(kit(3, 'told apart'), entered)[0]).toMatch(/no place is left/);
    expect(sentences(kit(3, 'share a value'), entered).at(-1)).toMatch(/one place is left/);
    expect(sentences(kit(null, 'told apart'), entered)).toEqual([]);
  });

  it('leave out what is retired', () => {
    const kit = twoCopies('share a value');
    const away = retire(kit, 'lenses', 'two', NOW, NOW);
    expect(away.ok && warningsOf(away.value, new Set())).toEqual([]);
  });
});
