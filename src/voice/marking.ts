// What is said when a value is marked as entered in the camera, and when the mark is taken back.
import type { InWords } from './outcomes.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const MARKED = (said: string, written: string): InWords => ({
  spoken: `${capital(said)} is marked as entered.`,
  written: `${written} is marked as entered in the camera. Undo takes the mark back.`,
});

export const ALREADY_MARKED = (said: string, written: string): InWords => ({
  spoken: `${capital(said)} is marked already.`,
  written: `${written} is already marked as entered in the camera.`,
});

export const MARK_TAKEN_BACK = (written: string): InWords => ({
  spoken: 'The mark is taken back.',
  written: `The mark is taken back: ${written} does not count as entered.`,
});
