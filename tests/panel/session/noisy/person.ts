// A person at the viewfinder who goes by the ear alone: says the word that is wanted, says it again when nothing comes,
// compares what is read back with what was seen, and takes back what is wrong.
import { halfPress, type PracticeCamera } from '../../../../src/practice/camera.ts';
import type { Random } from '../../../../src/practice/random.ts';
import { sayCorrection } from '../../../../src/hearing/languages/en/sayCorrection.ts';
import { readBack } from '../../../../src/words/en/verdict.ts';
import { TAUGHT } from '../../../../src/hearing/languages/en/words.ts';
import type { Verdict } from '../../../../src/sweep/verdict.ts';

const LIGHT_WORD = { steady: 'solid', late: 'delayed', flicker: 'flicker', dark: 'nothing', untold: 'nothing' } as const;

export class NoisyPerson {
  /** What they would say now; null while there is nothing to say. */
  wish: string | null = null;
  /** What they have seen in the hold under way. */
  seen: Verdict | null = null;
  private value = 0;
  private heldAt = 0;
  private timeIsUp = false;
  /** The value of a verdict that was taken wrongly and still stands. */
  private wrongAt: number | null = null;
  private presses = 0;
  /** Times that they heard something read back that they had not seen. */
  noticed = 0;
  private readonly camera: (press: number) => PracticeCamera;
  private readonly random: Random;

  constructor(camera: (press: number) => PracticeCamera, random: Random) {
    this.camera = camera;
    this.random = random;
  }

  /** The begin tone: the shutter button is half-pressed. */
  begins(): Verdict {
    this.timeIsUp = false;
    this.heldAt = this.value;
    const shown = halfPress(this.camera(this.presses++), this.value, this.random);
    // What held is told in one word.
    this.seen = shown.light === 'steady' ? { light: 'steady', arrows: 'none' } : shown;
    this.wish = this.wrongAt === null ? this.verdictInWords() : 'undo';
    return this.seen;
  }

  ends(): void {
    this.timeIsUp = true;
    if (this.wrongAt === null) this.wish = this.verdictInWords();
  }

  /** A prompt was spoken. */
  hears(text: string): void {
    if (text.startsWith('You can say') || text === 'Say that again.' || text === 'Not taken.') return;
    if (text === 'There is nothing to undo.') this.wrongAt = null;
    if (text === 'Paused.') return void (this.wish = 'resume');
    if (/more seconds?\.$/.test(text)) return this.ask();
    if (text === 'Was it steady?' || text === 'Steady?' || text === 'Still holding.') {
      this.timeIsUp ||= text !== 'Still holding.';
      return this.ask();
    }
    if (/same or shifted\?$/i.test(text)) return this.after(text, 'shifted');
    if (text.endsWith('Accept?')) return this.after(text, 'accept');
    // A question about a word leaves the wish as it is: said again if it was right, and if it was wrong.
    if (text.endsWith('?')) return;
    const value = valueIn(text);
    if (value === null) return void (this.wish = 'holding');
    if (text.startsWith('Undone.')) {
      if (this.wrongAt === value) this.wrongAt = null;
      this.seen = null;
    }
    if (text.startsWith('Again.')) this.seen = null;
    this.after(text, 'holding');
    this.value = value;
  }

  private ask(): void {
    this.wish = this.wrongAt === null ? this.verdictInWords() : 'undo';
  }

  /** What follows a verdict: is it the one that was told? */
  private after(text: string, next: string): void {
    const noted = NOTED.find((words) => text.startsWith(`${capital(words)}. `));
    if (noted !== undefined) {
      if (!this.seen || readBack(this.seen) !== noted) {
        this.wrongAt ??= this.heldAt;
        this.noticed++;
      }
      this.seen = null;
    }
    this.wish = this.wrongAt === null ? next : 'undo';
  }

  /** The word to say for what is seen; a steady light only once the time is up. */
  private verdictInWords(): string | null {
    if (!this.seen) return 'undo';
    const { light, arrows } = this.seen;
    if (light === 'steady') return this.timeIsUp ? TAUGHT.solid : null;
    return arrows === 'none' ? LIGHT_WORD[light] : `${LIGHT_WORD[light]} ${arrows}`;
  }
}

const LIGHTS = ['steady', 'late', 'flicker', 'dark', 'untold'] as const;
const SIGNS = ['none', 'left', 'right', 'balanced', 'lopsided'] as const;
/** Longest first: "flicker, left" begins with "flicker". */
const NOTED = LIGHTS.flatMap((light) => SIGNS.map((arrows) => readBack({ light, arrows }))).toSorted((a, b) => b.length - a.length);
export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The value that a prompt asks for: its last sentence. */
function valueIn(text: string): number | null {
  const last = text.toLowerCase().replace(/\.$/, '').split(/[.] /).at(-1)?.replace(/^set /, '');
  for (let value = -20; value <= 20; value++) if (sayCorrection(value) === last) return value;
  return null;
}
