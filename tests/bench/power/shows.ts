// Waits in the page itself until the panel shows something, so that it is known within a moment, and presses what is there.
import { press, type, type Seat } from '../../e2e/seat.ts';

/** All that is named must be so. */
export interface Wanted {
  readonly screen?: string;
  readonly phases?: readonly string[];
  readonly text?: string;
  readonly without?: string;
  /** A part of the announcement. */
  readonly said?: string;
  /** Another announcement than this one stands there. */
  readonly saidAfter?: string;
  /** More holds than these stand in the list. */
  readonly holdsOver?: number;
  /** The value to set is announced, the finish is offered, or the focus is asked for. */
  readonly prompted?: boolean;
}

const PATIENCE = 20_000;

export async function shows(seat: Seat, wanted: Wanted, patience = PATIENCE): Promise<void> {
  const seen = await seat.evaluate(whenShown, wanted, patience);
  if (seen !== '') throw new Error(`Never came: ${JSON.stringify(wanted)}. The panel shows “${seen}”`);
}

/** Runs in the panel: empty when it came, or what stands there instead. */
function whenShown(wanted: Wanted, patience: number): Promise<string> {
  const textOf = (selector: string): string => document.querySelector(selector)?.textContent?.trim() ?? '';
  const isSo = (): boolean => {
    const main = document.querySelector('main');
    const { screen, phase } = main?.dataset ?? {};
    const text = main?.textContent ?? '';
    const said = textOf('[aria-label="Announcement"]');
    const prompted = (): boolean => {
      if (phase === 'dialling') return said.includes(`Set ${textOf('[aria-label="Value to set"]')}:`);
      return phase === 'offered' ? said.endsWith('Accept it, or go on?') : phase === 'checking';
    };
    return (
      (wanted.screen === undefined || screen === wanted.screen) &&
      (wanted.phases === undefined || wanted.phases.includes(phase ?? '')) &&
      (wanted.text === undefined || text.includes(wanted.text)) &&
      (wanted.without === undefined || !text.includes(wanted.without)) &&
      (wanted.said === undefined || said.includes(wanted.said)) &&
      (wanted.saidAfter === undefined || (said !== '' && said !== wanted.saidAfter)) &&
      (wanted.holdsOver === undefined || document.querySelectorAll('[aria-label="Holds so far"] li').length > wanted.holdsOver) &&
      (wanted.prompted !== true || prompted())
    );
  };
  return new Promise((done) => {
    const look = (): void => {
      if (isSo()) end('');
    };
    const watch = new MutationObserver(look);
    const timer = setTimeout(() => end(`${JSON.stringify(document.querySelector('main')?.dataset)} ${textOf('main').slice(0, 400)}`), patience);
    const end = (seen: string): void => {
      clearTimeout(timer);
      watch.disconnect();
      done(seen);
    };
    watch.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
    look();
  });
}

/** A trusted click on the control of this name, or whose name goes on after a colon; waits until it is there. */
export async function tap(seat: Seat, name: string, within = 'body'): Promise<void> {
  if (!(await seat.evaluate(marked, name, within, PATIENCE))) throw new Error(`There is no “${name}” to press.`);
  await seat.click('[data-tapped]');
}

/** Runs in the panel: whether it came, and is marked for the click. */
function marked(name: string, within: string, patience: number): Promise<boolean> {
  const nameOf = (element: Element): string => {
    const own = element.matches('summary') ? (element.querySelector('h2') ?? element) : element;
    return (element.getAttribute('aria-label') ?? own.textContent ?? '').trim();
  };
  const find = (): Element | undefined =>
    Array.from(document.querySelectorAll(`:is(${within}) :is(button, summary, a, label)`)).find((element) => {
      const called = nameOf(element);
      return (called === name || called.startsWith(`${name}: `)) && element.checkVisibility();
    });
  return new Promise((done) => {
    const look = (): void => {
      const found = find();
      if (!found) return;
      for (const old of document.querySelectorAll('[data-tapped]')) delete (old as HTMLElement).dataset['tapped'];
      (found as HTMLElement).dataset['tapped'] = '';
      end(true);
    };
    const watch = new MutationObserver(look);
    const timer = setTimeout(() => end(false), patience);
    const end = (came: boolean): void => {
      clearTimeout(timer);
      watch.disconnect();
      done(came);
    };
    watch.observe(document, { subtree: true, childList: true, attributes: true });
    look();
  });
}

/** Types into the field whose label begins so, in place of what stands in it. */
export async function fill(seat: Seat, label: string, text: string): Promise<void> {
  const found = await seat.evaluate((wanted) => {
    const field = Array.from(document.querySelectorAll('input')).find(
      (input) => input.checkVisibility() && (input.labels?.[0]?.textContent ?? '').trim().startsWith(wanted),
    );
    field?.focus();
    field?.select();
    return field !== undefined;
  }, label);
  if (!found) throw new Error(`There is no field “${label}”.`);
  if (text === '') await press(seat, 'Delete');
  else await type(seat, text);
}
