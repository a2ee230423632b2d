// @vitest-environment happy-dom
// Contract of a part that is read on demand: never blank, read once, and a sentence where it cannot be read.
import { cleanup, render, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { late } from '../../src/panel/parts/late.tsx';

afterEach(cleanup);

const Part = ({ name }: { readonly name: string }) => <p>Part of {name}</p>;

test('a line stands in its place until it is read', async () => {
  let arrive: (part: typeof Part) => void = () => undefined;
  const Late = late(() => new Promise<typeof Part>((read) => (arrive = read)));
  render(<Late name="us" />);
  expect(screen.getByText('Opening…')).toBeTruthy();
  await act(async () => arrive(Part));
  expect(screen.getByText('Part of us')).toBeTruthy();
});

test('it is read once, and may be read before it is shown', async () => {
  let readings = 0;
  const Late = late(() => {
    readings += 1;
    return Promise.resolve(Part);
  });
  await act(async () => Late.fetch());
  render(<Late name="us" />);
  expect(screen.getByText('Part of us')).toBeTruthy();
  expect(readings).toBe(1);
});

test('a part that cannot be read is told in a sentence that says what to do', async () => {
  const Late = late<{ name: string }>(() => Promise.reject(new Error('gone')));
  render(<Late name="us" />);
  expect((await screen.findByRole('alert')).textContent).toMatch(/cannot be read\. Close the panel and open it again/);
});
