// @vitest-environment happy-dom
// Contract of the start: one press begins, nothing has to be named first, a name needs letters only, what does not fit is said
// beside its field, and nothing typed is lost.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { EMPTY_KIT, newBody, newConverter, newLens, type Kit } from '../../src/kit/kit.ts';
import { millimetres, moment } from '../../src/units.ts';
import { FakeSession, KIT } from './fakeSession.ts';
import { button, click, FIELD, lookUp, partsRead, read, show, text, type } from './show.tsx';

afterEach(cleanup);

const field = () => screen.getByLabelText(FIELD) as HTMLInputElement;
const press = async (name: string | RegExp): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};
const enter = (label: string, value: string) => act(() => void type(label, value));
const submit = async (element: Element): Promise<void> => {
  await act(() => void fireEvent.submit(element.closest('form') as HTMLFormElement));
  await partsRead();
};
/** Types into the field behind a chip and takes it with Enter. */
const tell = async (chip: RegExp, label: string, value: string): Promise<void> => {
  await press(chip);
  await enter(label, value);
  await submit(screen.getByLabelText(label));
};
const chips = (): string[] => [...document.querySelectorAll('.chip')].map(read);
const subject = (session: FakeSession) => session.sweep.value?.plan.subject;

describe('with an empty kit', () => {
  const empty = () => show(new FakeSession({ kit: EMPTY_KIT }));

  test('the field has the focus, and one press of Start begins with nothing named', async () => {
    const session = await empty();
    expect(document.activeElement).toBe(field());
    expect(chips()).toEqual(['Lens', 'Body', 'Focal length', 'Distance', '\u221220\u2026+20', 'More']);
    await press('Start');
    expect(session.sweep.value?.phase.name).toBe('dialling');
    expect(subject(session)).toMatchObject({ body: null, lens: null });
  });

  test('Enter in the empty field starts too', async () => {
    const session = await empty();
    await submit(field());
    expect(session.sweep.value?.phase.name).toBe('dialling');
  });

  test('a new name and Enter begin with that lens, its focal length and fifty of it as distance', async () => {
    const session = await empty();
    await lookUp('Corvid 35 f/2');
    expect(chips()).toEqual(['Corvid 35 f/2', 'Body', '35 mm', '1.75 m', '\u221220\u2026+20', 'More']);
    expect(button('New lens \u201cCorvid 35 f/2\u201d: Start')).toBeTruthy();
    await submit(field());
    expect(session.kit.value.lenses).toMatchObject([{ name: 'Corvid 35 f/2', focal: { from: 35, to: 35 } }]);
    expect(subject(session)).toMatchObject({ lens: { name: 'Corvid 35 f/2' }, focalLength: 35, body: null });
  });

  test('body, distance and scale told behind their chips go with it', async () => {
    const session = await empty();
    await lookUp('Corvid 35');
    await tell(/^Body:/, 'Name of the body', 'Velde M2');
    await tell(/^Distance:/, 'Distance to the target, m', '2,5 m');
    await press(/^Range:/);
    await enter('From', '\u221210');
    await enter('to', '10');
    await submit(screen.getByLabelText('to'));
    await press(/^New lens/);
    expect(session.kit.value.bodies).toMatchObject([{ name: 'Velde M2', scale: { min: -10, max: 10, step: 1 } }]);
    expect(session.kit.value.situations).toMatchObject([{ focalLength: 35, distance: 2500 }]);
    expect(session.sweep.value?.plan.scale).toEqual({ min: -10, max: 10, step: 1 });
  });

  test('a zoom asks for one press on the end it is measured at', async () => {
    const session = await empty();
    await lookUp('Corvid 24-70 f/4');
    await press(/^Focal length:/);
    await press('70\u00a0mm');
    expect(chips()).toContain('70 mm');
    expect(chips()).toContain('3.5 m');
    await press(/^New lens/);
    expect(subject(session)).toMatchObject({ focalLength: 70 });
  });

  test.each([
    [/^Focal length:/, 'Focal length, mm', '8500', 'Enter the focal length in millimetres, from 4 to 2000.'],
    [/^Distance:/, 'Distance to the target, m', 'far', 'Enter the distance in metres, from 0.05 to 500.'],
    [/^Range:/, 'From', 'twenty', 'Enter the lowest correction as a whole number, such as \u221220.'],
    [/^Range:/, 'step', '7', 'The step must divide the range evenly.'],
  ])('%s %s “%s” is refused in one sentence, stays as it was typed, and nothing begins until it is settled', async (chip, label, typed, sentence) => {
    const session = await empty();
    await tell(chip, label, typed);
    expect(text()).toContain(sentence);
    expect((screen.getByLabelText(label) as HTMLInputElement).value).toBe(typed);
    await press('Start');
    expect(session.sweep.value).toBe(null);
    expect(text()).toContain('Something you entered does not fit yet.');
    await act(() => void fireEvent.keyDown(screen.getByLabelText(label), { key: 'Escape' }));
    await press('Start');
    expect(session.sweep.value?.phase.name).toBe('dialling');
  });

  test('what stands in an open field counts when something else is pressed', async () => {
    const session = await empty();
    await press(/^Focal length:/);
    await enter('Focal length, mm', '85');
    await act(() => void fireEvent.focusOut(screen.getByLabelText('Focal length, mm')));
    await press('Start');
    expect(subject(session)).toMatchObject({ focalLength: 85 });
  });

  test('a look at the help loses nothing that was typed or told', async () => {
    await empty();
    await lookUp('Corvid 35');
    await tell(/^Body:/, 'Name of the body', 'Velde M2');
    await press('Help');
    await press('Back');
    expect(field().value).toBe('Corvid 35');
    expect(chips()).toContain('Velde M2');
  });

  test('arrows, care and way of working stand behind “More”, and say what they cost', async () => {
    const session = await empty();
    await press('More');
    await act(() => void fireEvent.change(screen.getByLabelText('Arrows beside the focus light'), { target: { value: 'right-is-down' } }));
    await act(() => void fireEvent.click(screen.getByRole('radio', { name: /^Thorough.*holds/ })));
    await act(() => void fireEvent.click(screen.getByRole('radio', { name: /^Step by step/ })));
    await press('Start');
    expect(session.settings.value.manner).toMatchObject({ care: 'thorough', order: 'outward' });
    expect(session.sweep.value?.plan.arrows).toBe('right-is-down');
  });

  test('practice is one link away, with or without arrows', async () => {
    const session = await empty();
    await press('Practice camera');
    await act(() => void fireEvent.click(screen.getByLabelText(/With arrows/)));
    await press('Practise');
    expect(session.asked).toEqual(['begin with practice, right-is-up']);
  });
});

describe('with a kit', () => {
  const measured = () => {
    const before = new FakeSession().open().hold('dark', 0).hold('steady', 6);
    before.input({ told: 'finish', by: 'key', heard: null });
    return new FakeSession({ records: [before.asRecord('one')] });
  };

  test('the last lens stands first with its last value, and one press measures it again', async () => {
    const session = await show(measured());
    expect(read(screen.getByLabelText('Last lens'))).toMatch(/Orrin 85 f\/1\.8.*85 mm at 4\.25 m.*last [+\u2212]?\d+/);
    await press('Start');
    expect(subject(session)).toMatchObject({ situation: 'orrin-85-near' });
  });

  test('“Next lens” stands beside it, and keeps the body', async () => {
    const session = await show(measured());
    await press('Next lens');
    await enter('Name of the next lens', 'Orrin 200 f/4');
    await submit(screen.getByLabelText('Name of the next lens'));
    expect(subject(session)).toMatchObject({ body: 'Velde M1', lens: 'Orrin 200 f/4', focalLength: 200, distance: 10_000 });
  });

  test('a few letters show the last value; Enter takes the first, says it, and the next Enter measures it', async () => {
    const session = await show(measured());
    await lookUp('orr');
    expect(screen.getByRole('list', { name: 'In the logbook' }).textContent).toContain('Orrin 85 f/1.8');
    await submit(field());
    expect(session.said.at(-1)).toMatch(/^Orrin 85 f\/1\.8 on Velde M1, 85\smm at 4\.25\sm: /);
    expect([field().value, session.sweep.value]).toEqual(['', null]);
    await submit(field());
    expect(subject(session)).toMatchObject({ situation: 'orrin-85-near' });
  });

  test('a new lens whose name begins like a known one can be started all the same', async () => {
    const session = await show(new FakeSession());
    await lookUp('Orrin 85 f/1');
    expect(button('Start: Orrin 85 f/1.8')).toBeTruthy();
    await press('New lens \u201cOrrin 85 f/1\u201d: Start');
    expect(session.kit.value.lenses.map(({ name }) => name)).toEqual(['Orrin 85 f/1.8', 'Orrin 85 f/1']);
  });

  test('a converter of the kit is measured with the lens as a situation of its own', async () => {
    const session = await show(new FakeSession({ kit: { ...KIT, converters: [newConverter('c', 'Orrin 1.4×', 1.4, moment(0))] } }));
    await press('More');
    await act(() => void fireEvent.change(screen.getByLabelText('Converter'), { target: { value: 'c' } }));
    expect(chips()).toContain('5.95 m');
    await press('Start');
    expect(session.kit.value.situations.at(-1)).toMatchObject({ lens: 'orrin-85', converter: 'c', focalLength: 85, distance: 5950 });
  });

  test('what was put away is not offered', async () => {
    const away = { ...newBody('m0', 'Velde M0', moment(0)), retired: moment(1) };
    await show(new FakeSession({ kit: { ...KIT, bodies: [away, ...KIT.bodies] } }));
    await press(/^Body:/);
    expect(screen.queryByRole('option', { name: 'Velde M0' })).toBeNull();
  });

  test('what waits without a name is offered to be named, in at most two fields', async () => {
    const standing: Kit = {
      ...KIT,
      lenses: [...KIT.lenses, { ...newLens('x', 'Lens without a name, 28 Nov 14:03', moment(0)), standIn: true }],
      situations: [
        ...KIT.situations,
        {
          id: 'waits',
          changed: moment(0),
          retired: null,
          standIn: true,
          body: 'm1',
          lens: 'x',
          converter: null,
          focalLength: millimetres(50),
          distance: millimetres(2500),
        },
      ],
    };
    const before = new FakeSession().open().hold('steady', 0);
    before.input({ told: 'finish', by: 'key', heard: null });
    const record = before.asRecord('one');
    const session = await show(
      new FakeSession({
        kit: standing,
        records: [{ ...record, subject: { ...record.subject, situation: 'waits', lens: 'Lens without a name, 28 Nov 14:03' } }],
      }),
    );
    await press('Name it');
    expect(screen.getAllByRole('textbox')).toHaveLength(1);
    await enter('Lens, with its focal length', 'Corvid pancake');
    await submit(screen.getByLabelText('Lens, with its focal length'));
    expect(text()).toContain('put it into the name of the lens');
    await enter('Lens, with its focal length', 'Corvid 40 pancake');
    await submit(screen.getByLabelText('Lens, with its focal length'));
    expect(session.records.value[0]?.subject).toMatchObject({ lens: 'Corvid 40 pancake', focalLength: 40, body: 'Velde M1' });
    expect(screen.queryByText('Name it')).toBeNull();
  });
});

describe('during a sweep and at its end', () => {
  const begun = async () => {
    const session = await show(new FakeSession({ kit: EMPTY_KIT }));
    await press('Start');
    return session;
  };

  test('what is missing stands over the sweep in chips, is filled in between holds, and no letter of it goes to the sweep', async () => {
    const session = await begun();
    expect(chips()).toEqual(['Lens', 'Body', '\u221220\u2026+20']);
    session.hold('steady');
    await partsRead();
    await press(/^Lens:/);
    const name = screen.getByLabelText('Name of the lens');
    expect(document.activeElement).toBe(name);
    await enter('Name of the lens', 'Corvid 85');
    await submit(name);
    expect(subject(session)).toMatchObject({ lens: { name: 'Corvid 85' }, focalLength: 85 });
    expect(session.sweep.value?.holds).toHaveLength(1);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Corvid 85');
    // A number does not part from its unit, nor does a line begin with what parts two facts.
    expect(Array.from(document.querySelectorAll('.chip'), ({ textContent }) => textContent)).toContain('85\u00a0mm\u00a0· 4.25\u00a0m');
  });

  test('the end asks whose result it is: body and lens, and keeps it under that name', async () => {
    const session = await begun();
    session.hold('steady');
    await act(() => void session.input({ told: 'finish', by: 'key', heard: null }));
    await partsRead();
    await enter('Body', 'Velde M1');
    await enter('Lens, with its focal length', 'Corvid 24-70 f/4');
    await press('70\u00a0mm');
    expect(subject(session)).toMatchObject({ body: 'Velde M1', lens: 'Corvid 24-70 f/4', focalLength: 70 });
    expect(text()).not.toContain('Whose result is it?');
  });
});

test('a sweep that another window runs does not push itself forward, and can be followed', async () => {
  const session = new FakeSession().open().hold('dark', 0);
  session.role.value = 'follower';
  await show(session);
  expect(text()).toContain('A sweep runs in another window');
  await act(() => void click('Follow it'));
  expect(screen.getByLabelText('Value to set')).toBeTruthy();
});
