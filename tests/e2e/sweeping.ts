// A whole sweep as a person does it: set up by keys, each value held and judged by what the eye sees, until the panel
// offers to finish. The eye is either a band that never wavers, or the practice light on the screen.
import { choose, press, tabTo, type, until, untilPhase, type Look, type Seat } from './seat.ts';

export type Word = 'solid' | 'delayed' | 'flicker' | 'nothing';

/** Tells what the light does at this value; called when the hold has begun. */
export type Eye = (value: number) => Word | Promise<Word>;

/** How the person tells the panel what to do. */
export interface Hand {
  beginHold: (seat: Seat) => Promise<void>;
  tell: (seat: Seat, word: Word) => Promise<void>;
}

export interface Told {
  readonly value: number;
  readonly word: Word;
}

/** The values from `low` to `high` hold; one step outside the light is late, further out it flickers, then it stays dark. */
export const steadyEye =
  (low: number, high: number): Eye =>
  (value) => {
    const outside = Math.max(low - value, value - high);
    if (outside <= 0) return 'solid';
    return outside <= 1 ? 'delayed' : outside <= 5 ? 'flicker' : 'nothing';
  };

const KEY: Record<Word, string> = { solid: 's', delayed: 'd', flicker: 'f', nothing: 'n' };

export const keys: Hand = {
  beginHold: (seat) => press(seat, ' '),
  tell: (seat, word) => press(seat, KEY[word]),
};

/** One hold: begun, judged as the eye tells, and read back. A steady light is told when the panel asks for it. */
export async function holdOnce(seat: Seat, eye: Eye, hand: Hand): Promise<Told & { readonly next: Look }> {
  const { value, holds } = await untilPhase(seat, 'dialling', 'offered');
  if (value === null) throw new Error('The panel asks for no value.');
  await hand.beginHold(seat);
  await untilPhase(seat, 'holding');
  const word = await eye(value);
  if (word === 'solid') await untilPhase(seat, 'judging');
  await hand.tell(seat, word);
  const next = await until(seat, 'the next prompt', (seen) => seen.holds.length > holds.length && wasPrompted(seen));
  return { value, word, next };
}

/** Holds until the finish is offered. Asked whether the focus is the same, the person looks and says yes. */
export async function sweep(seat: Seat, eye: Eye, hand: Hand, onHold: (told: Told, next: Look) => void = () => undefined): Promise<void> {
  for (let count = 0; count < 40; count += 1) {
    const { phase } = await untilPhase(seat, 'dialling', 'offered', 'checking');
    if (phase === 'offered') return;
    if (phase === 'checking') await press(seat, 's');
    const { next, ...told } = await holdOnce(seat, eye, hand);
    onHold(told, next);
  }
  throw new Error('Forty holds, and no offer to finish.');
}

/** The value on the outcome screen. */
export async function untilFound(seat: Seat): Promise<number | null> {
  return (await until(seat, 'the outcome', ({ phase, found }) => phase === 'finished' && found !== null)).found;
}

/** A prompt comes when what it follows is on disk; the person waits for it. */
function wasPrompted({ phase, value, announcement }: Look): boolean {
  if (phase === 'dialling') return announcement.includes(`Set ${written(value ?? 0)}:`);
  return phase === 'offered' ? announcement.endsWith('Accept it, or go on?') : phase === 'checking';
}

/** A correction as the panel writes it. */
export const written = (value: number): string => (value > 0 ? `+${value}` : String(value).replace('-', '\u2212'));

export interface KitNames {
  readonly body: string;
  readonly lens: string;
  readonly focalLength: string;
}

/** The start as it stands when nothing holds it up any more: its field has the focus. */
export const untilStart = (seat: Seat): Promise<Look> => until(seat, 'the start', ({ screen, text }) => screen === 'start' && text.includes('Practice camera'));

/** From a finished sweep of real kit to the start, by way of the next lens. */
export async function toTheStart(seat: Seat): Promise<void> {
  await choose(seat, 'Next lens');
  await until(seat, 'the next lens', ({ screen }) => screen === 'next');
  await seat.click('[aria-label="Back"]');
  await untilStart(seat);
}

/** From the start screen: names a lens, and behind the chips its body and focal length; Start begins. */
export async function beginWith(seat: Seat, kit: KitNames): Promise<void> {
  await nameKit(seat, kit);
  await choose(seat, `New lens \u201c${kit.lens}\u201d: Start`);
  await untilPhase(seat, 'dialling');
}

/** Types the lens into the field that has the focus, and what it is measured on into the chips. */
export async function nameKit(seat: Seat, { body, lens, focalLength }: KitNames): Promise<void> {
  await untilStart(seat);
  await tabTo(seat, 'Look up a lens, or name a new one');
  await type(seat, lens);
  await tell(seat, 'Body', 'Name of the body', body);
  await tell(seat, 'Focal length', 'Focal length, mm', focalLength);
}

/** Opens a chip, types in place of what stands in its field, all of which is selected, and takes it with Enter. */
export async function tell(seat: Seat, chip: string, field: string, text: string): Promise<void> {
  await choose(seat, chip);
  await tabTo(seat, field);
  await type(seat, text);
  await press(seat, 'Enter');
}

/** From the start screen through the settings and back. Three seconds is the shortest hold time there is. */
export async function shortenHolds(seat: Seat): Promise<void> {
  await choose(seat, 'Settings');
  await until(seat, 'the settings', ({ screen, text }) => screen === 'settings' && text.includes('Hold time'));
  await choose(seat, 'Working');
  await tabTo(seat, 'Hold time');
  await press(seat, 'Home');
  await until(seat, 'three seconds', ({ text }) => text.includes('Hold time: 3 s'));
  await seat.click('[aria-label="Back"]');
  await untilStart(seat);
}

/** From the start screen: reads in the settings what listening means, ticks it, and comes back. */
export async function agreeToListening(seat: Seat): Promise<void> {
  await choose(seat, 'Settings');
  await until(seat, 'what listening means', ({ text }) => text.includes('Its maker may have the sound sent to a server of theirs.'));
  await choose(seat, 'Voice');
  await seat.click('input[value="browser"]');
  await seat.click('[aria-label="Back"]');
  await untilStart(seat);
}

/** What the eye sees of the practice light: it watches the lamp on the screen for as long as the hold lasts. */
export const practiceEye =
  (seat: Seat): Eye =>
  () =>
    seat.evaluate(watchLamp);

/** Runs in the panel. A light that comes on within a blink is at once. */
function watchLamp(): Promise<Word> {
  const AT_ONCE = 350;
  const lamp = (): string | null | undefined => document.querySelector('[data-lit]')?.getAttribute('data-lit');
  const isHolding = (): boolean => document.querySelector('main')?.dataset['phase'] === 'holding';
  return new Promise((tell) => {
    let began: number | null = null;
    let wasLit = false;
    const timer = setInterval(() => {
      const shown = lamp();
      if (shown) began ??= performance.now();
      const lit = shown === 'true';
      if (!isHolding()) done(wasLit ? 'solid' : 'nothing');
      else if (wasLit && !lit) done('flicker');
      else if (lit && !wasLit && performance.now() - (began ?? 0) > AT_ONCE) done('delayed');
      wasLit ||= lit;
    }, 15);
    const done = (word: Word): void => {
      clearInterval(timer);
      tell(word);
    };
  });
}
