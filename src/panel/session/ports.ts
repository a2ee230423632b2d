// The world as a session needs it. The real ports come from the platform folder; tests bring their own.
import type { Alone } from '../../platform/alone.ts';
import type { Alarms } from '../../platform/alarm.ts';
import type { Microphone } from '../../platform/ear/asking.ts';
import type { Ear } from '../../platform/ear/ear.ts';
import type { EarOwner } from '../../platform/ear/owner.ts';
import type { Installed } from '../../platform/installed.ts';
import type { KeptCrops } from '../../platform/keptCrops.ts';
import type { Ownership } from '../../platform/ownership.ts';
import type { Snapshots } from '../../platform/snapshots.ts';
import type { SoundRoute } from '../../platform/soundRoute.ts';
import type { Speech } from '../../platform/speaking.ts';
import type { Store } from '../../platform/storage.ts';
import type { Takes } from '../../platform/takes.ts';
import type { Page } from '../../platform/tabs.ts';
import type { SyncedStore } from '../../platform/syncedStore.ts';
import type { Tones } from '../../platform/tones.ts';
import type { WakeLock } from '../../platform/wakeLock.ts';
import type { Distances } from '../../country.ts';
import type { Languages } from '../../language.ts';
import type { Moment } from '../../units.ts';

export interface Ports {
  readonly store: Store;
  readonly snapshots: () => Promise<Snapshots>;
  readonly crops: () => Promise<KeptCrops>;
  readonly synced: () => Promise<SyncedStore>;
  readonly ownership: Ownership;
  /** Waits until no window takes in a whole logbook, and keeps others from it. */
  readonly alone: Alone;
  readonly alarms: Alarms;
  readonly tones: Tones;
  readonly speech: Speech;
  readonly wakeLock: WakeLock;
  readonly ear: () => Promise<(owner: EarOwner) => Ear>;
  readonly microphone: () => Promise<Microphone>;
  readonly route: () => Promise<SoundRoute>;
  readonly takes: () => Promise<Takes>;
  readonly browserRecognises: boolean;
  /** Those that the person likes, as the browser tells it, best first; and those that the pages wear from now on. */
  readonly languages: { readonly liked: () => readonly string[]; readonly wear: (languages: Languages, distances: Distances) => void };
  readonly installed: Installed;
  readonly now: () => Moment;
  /** Whether `now` only runs, and follows no date that is set anew. */
  readonly keepSteady: (on: boolean) => void;
  readonly newId: () => string;
  readonly newSeed: () => number;
  readonly openPage: (page: Page) => void;
}
