// @vitest-environment happy-dom
// Contract of a table that comes in: what a column is stands in the language of the screens, beside the heading it has in the file.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { changeLanguages, words } from '../../src/words/catalogue.ts';
import { firstWords } from '../../src/words/first.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

afterEach(async () => {
  cleanup();
  await changeLanguages({ screens: 'en', voice: 'en' });
});

async function press(name: string): Promise<void> {
  await act(() => void click(name));
  await partsRead();
}

async function bringIn(table: string): Promise<void> {
  await show(new FakeSession());
  await press(firstWords().place.logbook);
  await press(words('logbook').files);
  const choose = screen.getByLabelText(words('files').table.choose);
  await act(() => void fireEvent.change(choose, { target: { files: [new File([table], 'own.csv')] } }));
  await act(() => new Promise((go) => setTimeout(go, 50)));
}

test('in German', async () => {
  await changeLanguages({ screens: 'de', voice: 'de' });
  await bringIn('Kamera,lens,mm,distance (m),correction\nVelde M1,Orrin 85,85,4.25,six\n');
  expect(text()).toContain('Wählen Sie noch eine Spalte für: Gehäuse („body“).');
  expect(screen.getAllByRole('option', { name: 'Brennweite („focal length (mm)“)' })).not.toHaveLength(0);
  expect(text()).toContain('Zeile 2, Wert („correction“):');
});
