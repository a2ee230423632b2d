// All rooms' changes from which nothing follows.
import type { Same } from './same.ts';
import { CALENDAR } from './calendar.ts';
import { HEARING } from './hearing.ts';
import { KIT } from './kit.ts';
import { LOGBOOK } from './logbook.ts';
import { OPTICS } from './optics.ts';
import { OWN_WORDS } from './ownWords.ts';
import { PHOTOGRAPHS } from './photographs.ts';
import { PRACTICE } from './practice.ts';
import { SWEEP } from './sweep.ts';
import { VOICE } from './voice.ts';

export const SAME: readonly Same[] = [...CALENDAR, ...HEARING, ...KIT, ...LOGBOOK, ...OPTICS, ...OWN_WORDS, ...PHOTOGRAPHS, ...PRACTICE, ...SWEEP, ...VOICE];
