// When the power goes: at a random moment of the work, or within 40 ms of a press or of an acknowledgement.
import type { Random } from '../../../src/practice/random.ts';

/** Milliseconds from the beginning, from this press, or from this acknowledgement. */
export interface Cut {
  readonly from: 'beginning' | 'press' | 'acknowledgement';
  readonly count: number;
  readonly after: number;
}

/** How long a work usually goes on, and how much it usually does meanwhile. */
export interface Course {
  readonly lasts: number;
  /** None where the panel does it by itself. */
  readonly presses: number;
  readonly acknowledges: number;
}

const SOON = 40;

export function drawCut(random: Random, { lasts, presses, acknowledges }: Course): Cut {
  const kind = random();
  if (kind < 0.3) return { from: 'beginning', count: 0, after: lasts * random() };
  const [from, most] = kind < 0.55 && presses > 0 ? (['press', presses] as const) : (['acknowledgement', acknowledges] as const);
  return { from, count: 1 + Math.floor(most * random()), after: SOON * random() };
}

export interface Fuse {
  begin(): void;
  pressed(): void;
  acknowledged(): void;
  /** When the power goes; false where what it was to follow never came, and it goes all the same. */
  readonly blown: Promise<boolean>;
}

/** So long it waits for what is to come first. */
const AT_LAST = 15_000;

export function createFuse({ from, count, after }: Cut): Fuse {
  const timers: ReturnType<typeof setTimeout>[] = [];
  let blow: (asDrawn: boolean) => void = () => undefined;
  const blown = new Promise<boolean>((done) => {
    blow = (asDrawn) => {
      timers.forEach(clearTimeout);
      done(asDrawn);
    };
  });
  const burn = (milliseconds: number, asDrawn: boolean): void => void timers.push(setTimeout(() => blow(asDrawn), milliseconds));
  const counted = (what: Cut['from']) => {
    let seen = 0;
    return (): void => {
      seen += 1;
      if (from === what && seen === count) burn(after, true);
    };
  };
  return {
    begin: () => burn(...((from === 'beginning' ? [after, true] : [AT_LAST, false]) as [number, boolean])),
    pressed: counted('press'),
    acknowledged: counted('acknowledgement'),
    blown,
  };
}
