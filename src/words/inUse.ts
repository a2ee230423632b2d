// Which language the screens are in, and which the panel speaks and understands. Everything that reads a sentence reads these, so that a
// change shows at once and everywhere.
import { signal } from '@preact/signals';
import { LANGUAGES, type Languages } from '../language.ts';

export const inUse = signal<Languages>({ screens: LANGUAGES[0], voice: LANGUAGES[0] });
