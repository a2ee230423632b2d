// What the person has set once for every sweep: the manner of working, and how the panel speaks, listens and sounds.
import * as v from 'valibot';
import { DISTANCES } from './country.ts';
import { LANGUAGES } from './language.ts';
import { TrainingRound } from './practice/training/round.ts';
import { Moment } from './storedUnits.ts';
import { Manner } from './sweep/manner.ts';

/** More would say little: only the newest count. */
export const ROUNDS_KEPT = 20;

/** `system`: light or dark, as the computer is. */
const THEMES = ['system', 'light', 'dark', 'dim', 'red'] as const;
export type Theme = (typeof THEMES)[number];

export const Settings = v.object({
  manner: Manner,
  voice: v.object({
    /**
     * `own`: the words the person taught. `here`: the browser's recogniser, on this computer only. `browser`: the same, and
     * its maker may have the sound sent away; only after the person said yes to that. None stands in for another.
     */
    listen: v.picklist(['off', 'own', 'here', 'browser']),
    /** How the person said they want to be listened to, while the microphone or the words for it are still to come. */
    wish: v.fallback(v.picklist(['none', 'own', 'here', 'browser']), 'none'),
    /** `pressed`: the one switch opens the ear, for noisy rooms. */
    open: v.fallback(v.picklist(['always', 'pressed']), 'always'),
    /** Own words that were taken and stood become further takes. */
    learn: v.fallback(v.boolean(), false),
    speak: v.boolean(),
    /** Pace of speech, 1 being the voice's own. */
    rate: v.pipe(v.number(), v.minValue(0.5), v.maxValue(2)),
    /** The name of the voice that speaks; empty for the computer's choice. */
    voice: v.fallback(v.string(), ''),
  }),
  /** Tones. */
  sound: v.boolean(),
  /** Of tones and speech: 1 is the loudest. */
  loudness: v.fallback(v.pipe(v.number(), v.minValue(0), v.maxValue(1)), 1),
  /** Tones and speech were tried out once. */
  soundChecked: v.fallback(v.boolean(), false),
  logbook: v.optional(
    v.object({
      /** How old a measurement may be before it is due again. */
      days: v.pipe(v.number(), v.integer(), v.minValue(7), v.maxValue(3650)),
      /** Under which name this computer's last values travel through the browser's sync; null where they do not. */
      sync: v.optional(v.nullable(v.pipe(v.string(), v.minLength(1), v.maxLength(60))), null),
      /** The person is reminded of a backup. */
      remind: v.optional(v.fallback(v.boolean(), true), true),
      /** When that was last put off. */
      putOff: v.optional(v.fallback(v.nullable(Moment), null), null),
    }),
    { days: 365, sync: null, remind: true, putOff: null },
  ),
  training: v.optional(
    v.object({
      /** Newest last. */
      rounds: v.pipe(v.array(TrainingRound), v.maxLength(ROUNDS_KEPT)),
      /** The person said yes to their own reliability in place of the usual one. */
      own: v.boolean(),
    }),
    { rounds: [], own: false },
  ),
  /** Holds on a real camera in which the person was told what to press. */
  coached: v.optional(v.pipe(v.number(), v.integer(), v.minValue(0)), 0),
  /** `browser`: the first of the browser's languages that is there. `screens`: spoken and understood as written. `country`: as is usual in it. */
  language: v.optional(
    v.object({
      screens: v.fallback(v.picklist(['browser', ...LANGUAGES]), 'browser'),
      voice: v.fallback(v.picklist(['screens', ...LANGUAGES]), 'screens'),
      distances: v.fallback(v.picklist(DISTANCES), 'country'),
    }),
    { screens: 'browser', voice: 'screens', distances: 'country' },
  ),
  look: v.optional(
    v.object({
      theme: v.fallback(v.picklist(THEMES), 'system'),
      /** The far view: a sweep fills the panel, to be read from the tripod. */
      far: v.fallback(v.boolean(), false),
    }),
    { theme: 'system', far: false },
  ),
});
export type Settings = v.InferOutput<typeof Settings>;
