// @vitest-environment happy-dom
// Contract of the glance: on the screen of a body and in the logbook of one body, every lens has its strip, which leads to its situation
// and says itself to those who hear the screen.
import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { newBody, newLens, type Kit } from '../../src/kit/kit.ts';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import type { Entry } from '../../src/logbook/entry.ts';
import type { LogRecord } from '../../src/logbook/record.ts';
import { moment } from '../../src/units.ts';
import { sweepRecord, T0 } from '../logbook/libraryWith.ts';
import { FakeSession, KIT } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

afterEach(cleanup);

const [SITUATION] = KIT.situations;
const LENSES = ['Orrin 35 f/2', 'Corvid 24-70 f/4'] as const;
const FULL: Kit = {
  ...KIT,
  bodies: [...KIT.bodies, newBody('m2', 'Velde M2', moment(0))],
  lenses: [...KIT.lenses, ...LENSES.map((name) => newLens(name, name, moment(0)))],
  situations: [
    ...KIT.situations,
    ...LENSES.map((lens) => ({ ...SITUATION!, id: lens, lens })),
    ...[70, 24].map((focalLength) => ({ ...SITUATION!, id: `zoom-${focalLength}`, lens: LENSES[1], focalLength })),
    { ...SITUATION!, id: 'elsewhere', body: 'm2' },
  ],
} as Kit;
const subject = { situation: SITUATION!.id, body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250 };
const records = [sweepRecord('r', T0, -2, 4, { subject }) as LogRecord];

const entries = [{ id: 'e', at: T0, subject, value: 3, record: 'r', conditions: unknownConditions(T0) } as Entry];

const opened = (kit = FULL): Promise<FakeSession> => show(new FakeSession({ kit, records, entries }));
const press = async (name: string | RegExp): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};
const glance = () => within(screen.getByRole('region', { name: 'Lenses at a glance' }));

test('the screen of a body shows its lenses by name, each from short to long, and none of another body', async () => {
  await opened();
  await press('Kit');
  await press('Velde M1');
  expect(glance().getAllByRole('img')).toHaveLength(4);
  await press('Show all 5');
  const strips = glance()
    .getAllByRole('button')
    .map(({ textContent }) => textContent);
  expect(strips).toHaveLength(5);
  expect(strips.map((one) => /(\d+)\u00a0mm/.exec(one ?? '')?.[1])).toEqual(['24', '70', '85', '85', '85']);
});

test('a strip says band, centre, interval and what is entered; one that was never measured says so', async () => {
  await opened();
  await press('Kit');
  await press('Velde M1');
  await press('Show all 5');
  expect(glance().getByRole('img', { name: 'Band \u22122 to +4. Centre +1, between +0.5 and +1.5. +3 is entered.' })).toBeTruthy();
  expect(glance().getAllByRole('img', { name: 'Not measured yet.' })).toHaveLength(4);
});

test('the logbook of one body is its glance, narrowed as the list is, and a strip leads to its situation', async () => {
  await opened();
  await press('Logbook');
  expect(screen.queryByRole('region', { name: 'Lenses at a glance' })).toBeNull();
  await act(() => void fireEvent.change(screen.getByLabelText('Body'), { target: { value: 'm1' } }));
  await partsRead();
  expect(glance().getAllByRole('button')).toHaveLength(5);
  await act(() => void fireEvent.input(screen.getByRole('searchbox'), { target: { value: '35' } }));
  expect(glance().getAllByRole('button')).toHaveLength(1);
  await act(() => void fireEvent.click(glance().getByRole('button')));
  await partsRead();
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Orrin 35 f/2');
  expect(text()).toContain('Measure it');
});

test('a new body, and one without lenses, has no glance', async () => {
  await opened({ ...FULL, situations: [] });
  await press('Kit');
  await press('Velde M2');
  expect(screen.queryByRole('region', { name: 'Lenses at a glance' })).toBeNull();
  await press('Back');
  await press('Add a body');
  expect(screen.queryByRole('region', { name: 'Lenses at a glance' })).toBeNull();
});
