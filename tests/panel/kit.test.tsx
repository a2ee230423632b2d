// @vitest-environment happy-dom
// Contract of the kit's screens: everything about a body or lens can be said, what does not fit is told beside its field,
// another window's change is never overwritten, and a photograph fills in only what is ticked.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test, vi } from 'vitest';
import { newLens } from '../../src/kit/kit.ts';
import { moment } from '../../src/units.ts';
import { jpegFile, tiffFile, VELDE } from '../kit/photographFile.ts';
import { FakeSession, KIT } from './fakeSession.ts';
import { click, partsRead, PATIENCE, show, text, type } from './show.tsx';

afterEach(cleanup);

const enter = (label: string, value: string) => act(() => void type(label, value));
const press = async (name: string | RegExp): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};

async function kit(session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  await press('Kit');
  return session;
}

test('a body is described whole and kept', async () => {
  const session = await kit();
  await press('Velde M1');
  await enter('Serial number', 'KX-0042');
  await enter('How many lenses it remembers', '20');
  await act(() => void fireEvent.change(screen.getByLabelText('Two copies of one lens'), { target: { value: 'share a value' } }));
  await press('Save');
  expect(session.kit.value.bodies).toMatchObject([{ id: 'm1', serial: 'KX-0042', remembers: 20, copies: 'share a value' }]);
  await press(/Velde M1/);
  await press('Save');
  expect(session.kit.value.bodies[0]).toMatchObject({ serial: 'KX-0042', scale: { min: -20, max: 20, step: 1 } });
});

test('a form stays until what was saved is on disk, and a second press saves nothing more', async () => {
  const session = await kit();
  let written = (_isThere: boolean): void => undefined;
  session.disk = new Promise((done) => (written = done));
  await press('Add a lens');
  await enter('Name', 'Corvid 85');
  await press('Save');
  await press('Save');
  expect([screen.getByRole('main').dataset['screen'], session.kit.value.lenses.map(({ name }) => name)]).toEqual(['lens', ['Orrin 85 f/1.8', 'Corvid 85']]);
  await act(async () => written(true));
  await partsRead();
  expect(screen.getByRole('main').dataset['screen']).toBe('kit');
});

test('who goes back while it is written has gone back once', async () => {
  const session = await kit();
  let written = (_isThere: boolean): void => undefined;
  session.disk = new Promise((done) => (written = done));
  await press('Velde M1');
  await press('Save');
  await press('Back');
  await act(async () => written(true));
  await partsRead();
  expect(screen.getByRole('main').dataset['screen']).toBe('kit');
});

test('a note of what happened is called saved when it is on disk, and not where that cannot be', async () => {
  const session = await kit();
  await press('Velde M1');
  let written = (_isThere: boolean): void => undefined;
  session.disk = new Promise((done) => (written = done));
  await press('Save the note');
  expect(text()).not.toContain('Saved.');
  await act(async () => written(true));
  expect(text()).toContain('Saved. What was measured before is due again.');
  session.disk = Promise.resolve(false);
  await press('Save the note');
  expect(text()).toContain('It is shown here but is not on the disk yet.');
  expect(text()).not.toContain('Saved. What');
});

test('what does not fit is said beside its field and nothing is saved', async () => {
  const session = await kit();
  await press('Add a lens');
  await enter('shortest', '9999');
  await press('Save');
  expect(text()).toContain('Give it a name you will recognise.');
  expect(session.kit.value.lenses).toHaveLength(1);
});

test('a form opened before another window changed the same body does not overwrite that change', async () => {
  const session = await kit();
  await press('Velde M1');
  const [body] = session.kit.value.bodies;
  if (!body) throw new Error('no body');
  session.putKit('bodies', { ...body, serial: 'other window' }, body.changed);
  await enter('Serial number', 'this window');
  await press('Save');
  expect(text()).toContain('was changed in another window');
  expect(session.kit.value.bodies).toMatchObject([{ serial: 'other window' }]);
});

test('two copies of one lens on a body that cannot tell them apart are warned of', async () => {
  const two = { ...newLens('second', 'Orrin 85 f/1.8', moment(0)), serial: '2' };
  const [situation] = KIT.situations;
  if (!situation) throw new Error('no situation');
  await kit(new FakeSession({ kit: { ...KIT, lenses: [...KIT.lenses, two], situations: [situation, { ...situation, id: 'two', lens: 'second' }] } }));
  expect(text()).toContain('may share one stored value on Velde M1');
});

test('a retired lens stays in the kit', async () => {
  const session = await kit();
  await press('Orrin 85 f/1.8');
  await press(/^Retire, and/);
  expect(session.kit.value.lenses[0]?.retired).not.toBeNull();
  expect(text()).toContain('Retired (1)');
});

test('a photograph is offered field by field, and only what is ticked is taken', async () => {
  const session = await kit();
  await act(
    () =>
      void fireEvent.change(screen.getByLabelText('A photograph'), { target: { files: [new File([new Uint8Array(jpegFile(tiffFile(VELDE)))], 'one.jpg')] } }),
  );
  await vi.waitFor(() => expect(text()).toContain('Use ticked details'), PATIENCE);
  await act(() => void fireEvent.click(screen.getByLabelText(/^Body serial number/)));
  await press('Use ticked details');
  expect(session.kit.value.bodies.map(({ serial }) => serial)).toContain('004711');
  expect(session.kit.value.lenses).toHaveLength(1);
});

test('a file that is no photograph is told in a sentence', async () => {
  await kit();
  const file = new File(['words'], 'note.jpg');
  await act(() => void fireEvent.change(screen.getByLabelText('A photograph'), { target: { files: [file] } }));
  await vi.waitFor(() => expect(text()).toContain('This file is no photograph that can be read here'), PATIENCE);
});
