// Contract of the look-up in the address bar: the last value of each situation that answers, read anew after a change.
import { expect, test } from 'vitest';
import { createLastValues } from '../../src/background/lastValues.ts';
import { KEY, entryKey } from '../../src/logbook/keys.ts';
import { libraryWith, T0 } from '../logbook/libraryWith.ts';

const library = libraryWith({ entries: [{ id: 'e', value: 6 }] });
const [entry] = library.entries;

function addressBar(liked = 'en-GB') {
  const stored: Record<string, unknown> = { version: 3, [KEY.kit]: library.kit, [entryKey('e')]: entry };
  const lastValues = createLastValues(
    () => Promise.resolve({ ...stored }),
    () => T0,
    () => [liked],
  );
  return { stored, lastValues };
}

test('a few letters answer with the value in the camera', async () => {
  const { lastValues } = addressBar();
  expect(await lastValues.answer('85 velde')).toEqual(['+6  Orrin 85 f/1.8 · Velde M1 · 85\u00a0mm · 4.25\u00a0m']);
});

test('in feet where the country measures in them', async () => {
  expect(await addressBar('en-US').lastValues.answer('85 velde')).toEqual(['+6  Orrin 85 f/1.8 · Velde M1 · 85\u00a0mm · 13.9\u00a0ft']);
  expect(await addressBar('en-CA').lastValues.answer('85 velde')).toEqual(['+6  Orrin 85 f/1.8 · Velde M1 · 85\u00a0mm · 4.25\u00a0m']);
});

test('a whole question answers too', async () => {
  const { lastValues } = addressBar();
  expect(await lastValues.answer('what is the eighty-five')).toEqual([expect.stringMatching(/^\+6 /)]);
});

test('what fits nothing says so', async () => {
  const { lastValues } = addressBar();
  expect(await lastValues.answer('zzz')).toEqual(['Nothing in the logbook fits. Try fewer letters.']);
});

test('a changed logbook is read anew once the change is told', async () => {
  const { stored, lastValues } = addressBar();
  await lastValues.answer('85');
  stored[entryKey('f')] = { ...entry, id: 'f', at: T0 + 1, value: -3 };
  lastValues.forget();
  expect(await lastValues.answer('85')).toEqual([expect.stringMatching(/^\u22123 /)]);
});

test('a store that cannot be read is said, and tried again', async () => {
  let fails = true;
  const lastValues = createLastValues(
    () => (fails ? Promise.reject(new Error('gone')) : Promise.resolve({})),
    () => T0,
    () => ['en-GB'],
  );
  expect(await lastValues.answer('85')).toEqual(['The logbook cannot be read just now. Open the panel.']);
  fails = false;
  expect(await lastValues.answer('85')).toEqual(['Nothing in the logbook fits. Try fewer letters.']);
});
