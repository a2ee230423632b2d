// The session of a real panel: every port is the browser itself.
import { alone } from '../../platform/alone.ts';
import { createAlarms } from '../../platform/alarm.ts';
import { newId, newSeed } from '../../platform/chance.ts';
import { keepSteady, now } from '../../platform/clock.ts';
import { browserRecogniser } from '../../platform/ear/available.ts';
import { installed } from '../../platform/installed.ts';
import { createOwnership } from '../../platform/ownership.ts';
import { createSpeech } from '../../platform/speech.ts';
import { store } from '../../platform/storage.ts';
import { openPage } from '../../platform/tabs.ts';
import { createTones } from '../../platform/tones.ts';
import { likedLanguages, wearLanguages } from '../../platform/language.ts';
import { createWakeLock } from '../../platform/wakeLock.ts';
import { vocabulary } from '../../words/taught.ts';
import { createSession } from './create.ts';
import type { Session } from './session.ts';

/** Of what is said and understood. */
const tag = (): string => vocabulary().tag;

export const openSession = (): Session =>
  createSession({
    store,
    snapshots: async () => (await import('../../platform/snapshots.ts')).snapshots,
    crops: async () => (await import('../../platform/keptCrops.ts')).keptCrops,
    synced: async () => (await import('../../platform/syncedStore.ts')).syncedStore,
    ownership: createOwnership(),
    alone,
    alarms: createAlarms(),
    tones: createTones(),
    speech: createSpeech(tag),
    wakeLock: createWakeLock(),
    ear: async () => (await import('../../platform/ear/ear.ts')).createEar,
    microphone: async () => (await import('../../platform/ear/asking.ts')).microphoneFor(tag),
    route: async () => (await import('../../platform/aloud.ts')).createSoundRoute(),
    takes: async () => (await import('../../platform/takes.ts')).takesIn(tag),
    browserRecognises: browserRecogniser() !== null,
    languages: { liked: likedLanguages, wear: wearLanguages },
    installed,
    now,
    keepSteady,
    newId,
    newSeed,
    openPage,
  });
