// What is saved and put away of the kit, and what a body cannot keep apart, kept for every arrangement that matters.
import { expect, test } from 'vitest';
import { isRetired, put, retire } from '../../src/kit/change.ts';
import { warningsFor, warningsOf } from '../../src/kit/warnings.ts';
import { millimetres as mm, moment } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';
import { kit } from './arrangements.ts';

test('what is saved, put away and refused', () => {
  const situation = kit.situations[0]!;
  const tries = [
    put(kit, 'situations', { ...situation, distance: mm(1) }, situation.changed, moment(9)),
    put(kit, 'situations', { ...situation, distance: mm(1) }, situation.changed, moment(-9)),
    put(kit, 'situations', situation, null, moment(9)),
    put(kit, 'situations', { ...situation, id: 'new' }, null, moment(9)),
    put(kit, 'situations', { ...situation, id: 'new' }, moment(1), moment(9)),
    put(kit, 'situations', { ...situation, id: 'new', body: 'x' }, null, moment(9)),
    put(kit, 'situations', { ...situation, id: 'new', lens: 'x' }, null, moment(9)),
    put(kit, 'situations', { ...situation, id: 'new', converter: 'x' }, null, moment(9)),
    put(kit, 'situations', { ...situation, id: 'new', converter: 'c' }, null, moment(9)),
    retire(kit, 'situations', 's5', null, moment(9)),
    retire(kit, 'situations', 'gone', moment(3), moment(9)),
  ];
  expect(
    tries.map((each) =>
      oneLine(each.ok ? each.value.situations.map(({ id, changed, retired, distance }) => [id, changed, retired, distance].join(' ')) : each.fault),
    ),
  ).toMatchSnapshot('saved');
  const gone = (list: 'bodies' | 'lenses' | 'converters') => ({ ...kit, [list]: kit[list].map((item) => ({ ...item, retired: moment(1) })) });
  expect(
    [kit, gone('bodies'), gone('lenses'), gone('converters')].map((each) => each.situations.map((one) => Number(isRetired(each)(one))).join('')),
  ).toMatchSnapshot('away');
});

test('what a body cannot keep apart, and when its memory is nearly full', () => {
  const copies = ['told apart', 'share a value', 'not known'] as const;
  const ids = new Set(['s', 's2', 's3', 's4', 's7']);
  const warned = copies.flatMap((copy) =>
    [null, 1, 2, 3, 4, 5, 6, 9].map((remembers) => {
      const given = {
        ...kit,
        lenses: kit.lenses.map((lens) => ({ ...lens, model: lens.id === 'l3' ? null : 'Orrin  X' })),
        bodies: kit.bodies.map((body) => ({ ...body, copies: copy, remembers })),
      };
      const warnings = warningsOf(given, ids);
      return [
        copy,
        remembers,
        ...warnings.map((each) =>
          [each.about, each.body.id, each.lenses.map(({ id }) => id).join(), each.about === 'memory' ? each.left : each.surely].join(' '),
        ),
        ...given.situations.map((one) => warningsFor(one, warnings).length),
      ].join('; ');
    }),
  );
  expect(warned).toMatchSnapshot();
});
