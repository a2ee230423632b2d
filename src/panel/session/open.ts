// The session of a real panel: every port is the browser itself.
import { createAlarms } from '../../platform/alarm.ts';
import { newId, newSeed } from '../../platform/chance.ts';
import { now } from '../../platform/clock.ts';
import { createEar } from '../../platform/ear/ear.ts';
import { createOwnership } from '../../platform/ownership.ts';
import { createSpeech } from '../../platform/speech.ts';
import { store } from '../../platform/storage.ts';
import { openPage } from '../../platform/tabs.ts';
import { createTones } from '../../platform/tones.ts';
import { createWakeLock } from '../../platform/wakeLock.ts';
import { LANGUAGE } from '../../voice/vocabulary/en.ts';
import { createSession } from './create.ts';
import type { Session } from './session.ts';

export const openSession = (): Session =>
  createSession({
    store,
    snapshots: async () => (await import('../../platform/snapshots.ts')).snapshots,
    ownership: createOwnership(),
    alarms: createAlarms(),
    tones: createTones(),
    speech: createSpeech(LANGUAGE),
    wakeLock: createWakeLock(),
    ear: createEar,
    now,
    newId,
    newSeed,
    openMicrophonePage: () => openPage('microphone.html'),
    openTargetPage: (situation) => openPage(`target.html#${situation}`),
  });
