// A whole sweep by own words: what is taught is put where the panel keeps it, and then a person looks at the panel and says one
// word after another, says it again when nothing came of it, and takes back what was noted wrongly.
import type { Settings } from '../../src/settings.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import type { Journal } from '../../src/sweep/event.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import { millimetres, moment, seconds } from '../../src/units.ts';
import type { Take } from '../../src/voice/ownWords/take.ts';
import { opened } from '../sweep/staged.ts';
import { look, type Look, type Seat } from './seat.ts';
import { steadyEye, type Word } from './sweeping.ts';

export const TAUGHT = ['holding', 'solid', 'delayed', 'flicker', 'nothing', 'undo', 'accept', 'repeat'];

const manner = { ...USUAL_MANNER, care: 'quick' as const, holdTime: seconds(3) };
const subject = { situation: 'orrin', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: millimetres(85), distance: millimetres(4250) };

/** What lies in the browser's storage: a sweep that has just been opened, and listening for own words that are learned from. */
export function underWay(): { live: Journal; settings: Settings } {
  return {
    live: [{ ...opened({ subject, arrows: 'absent', practice: null, manner }), at: moment(Date.now()) }],
    settings: { ...USUAL_SETTINGS, manner, voice: { ...USUAL_SETTINGS.voice, listen: 'own', learn: true, speak: false } },
  };
}

/** Runs in a page of the extension: puts what was taught where the panel keeps it. */
export function putTaught(takes: readonly Take[]): Promise<void> {
  return new Promise((done, failed) => {
    const asked = indexedDB.open('sweepbook-words');
    asked.addEventListener('upgradeneeded', () => asked.result.createObjectStore('own'));
    asked.addEventListener('error', () => failed(new Error('no database')));
    asked.addEventListener('success', () => {
      const change = asked.result.transaction('own', 'readwrite');
      change.objectStore('own').put({ version: 1, language: 'en-US', takes }, 'taught');
      change.addEventListener('complete', () => {
        asked.result.close();
        done();
      });
    });
  });
}

/** Runs in a page of the extension: the words of the takes that were learned. */
export function wordsLearned(): Promise<readonly string[]> {
  return new Promise((done, failed) => {
    const asked = indexedDB.open('sweepbook-words');
    asked.addEventListener('error', () => failed(new Error('no database')));
    asked.addEventListener('success', () => {
      const read: IDBRequest<{ takes: readonly Take[] }> = asked.result.transaction('own').objectStore('own').get('taught');
      read.addEventListener('error', () => failed(new Error('not read')));
      read.addEventListener('success', () => {
        asked.result.close();
        done(read.result.takes.filter(({ learned }) => learned).map(({ word }) => word));
      });
    });
  });
}

/** The values from 2 to 8 hold. */
export const eye = steadyEye(2, 8);
const DID: Record<Word, string> = { solid: 'steady', delayed: 'late', flicker: 'flickering', nothing: 'dark' };
/** How long a person takes to answer a tone, and how long they wait before they say a word again. */
const REACTION = 500;
const PATIENCE = 1800;
const LONGEST = 150_000;

/** Speaks until the offered finish is accepted. */
export async function sweepByVoice(seat: Seat, say: (word: string) => Promise<void>): Promise<void> {
  const verdicts: { value: number; word: Word }[] = [];
  const deadline = performance.now() + LONGEST;
  for (;;) {
    const seen = await look(seat);
    if (seen.phase === 'finished') return;
    if (performance.now() > deadline) throw new Error(`The sweep never ends. The panel shows ${JSON.stringify(seen)}`);
    const word = await wordFor(seen);
    if (word === null) {
      await new Promise((go) => setTimeout(go, 50));
      continue;
    }
    await new Promise((go) => setTimeout(go, REACTION));
    if ((await look(seat)).phase !== seen.phase) continue;
    await say(word);
    await somethingCame(seen);
  }

  async function wordFor({ phase, value, holds }: Look): Promise<string | null> {
    if (holds.length < verdicts.length) verdicts.length = holds.length;
    const wrong = holds.findIndex((hold, index) => verdicts[index] && !hold.includes(DID[verdicts[index].word]));
    if (wrong >= 0) return 'undo';
    if (phase === 'dialling') return 'holding';
    if (phase === 'offered') return 'accept';
    if (value === null) return null;
    const word = await eye(value);
    if (phase === 'holding' && word === 'solid') return null;
    verdicts[holds.length] = { value, word };
    return word;
  }

  /** Waits until something came of what was said, or it is time to say it again. */
  async function somethingCame(before: Look): Promise<void> {
    const until = performance.now() + PATIENCE;
    while (performance.now() < until) {
      const { phase, holds } = await look(seat);
      if (phase !== before.phase || holds.length !== before.holds.length) return;
      await new Promise((go) => setTimeout(go, 50));
    }
  }
}
