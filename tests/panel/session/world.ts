// A computer with windows, for tests of the session: fakes of our own ports only. Everything the ports are asked to do
// is written to one log in order, so that a test can tell what came before what.
import { vi } from 'vitest';
import type { Languages } from '../../../src/language.ts';
import { createSession } from '../../../src/panel/session/create.ts';
import type { Ports } from '../../../src/panel/session/ports.ts';
import type { Session } from '../../../src/panel/session/session.ts';
import type { RecognisedBy } from '../../../src/voice/deaf.ts';
import type { EarOwner } from '../../../src/platform/ear/owner.ts';
import type { CropPair } from '../../../src/platform/keptCrops.ts';
import type { Snapshot } from '../../../src/platform/snapshots.ts';
import type { StoreFault } from '../../../src/platform/storage.ts';
import type { SyncFault } from '../../../src/platform/syncedStore.ts';
import { failed, got, type Result } from '../../../src/result.ts';
import type { Alarm } from '../../../src/sweep/effect.ts';
import { inputOf } from '../../../src/sweep/meaning.ts';
import { moment, seconds, type Moment, type Seconds } from '../../../src/units.ts';
import { ownWordsOf, type Take } from '../../../src/voice/ownWords/take.ts';

const NO_ROOM: StoreFault = { is: 'not written', why: 'full' };

let ids = 0;

type Listener = (changes: Readonly<Record<string, unknown>>) => void;

/** What the browser carries between the computers of one account. */
export class Account {
  carried: Record<string, unknown> = {};
  readonly computers: Computer[] = [];
  /** Nothing is taken or given. */
  down = false;
  writes = 0;

  change(entries: Record<string, unknown>): Result<void, SyncFault> {
    if (this.down) return failed('no sync');
    this.writes++;
    const all = Object.entries({ ...this.carried, ...structuredClone(entries) });
    this.carried = Object.fromEntries(all.filter(([, value]) => value !== undefined));
    for (const { windows } of this.computers) for (const { onSynced } of windows) onSynced?.(Object.keys(entries));
    return got(undefined);
  }
}

/** What all windows of one computer share: the disk, the lock and the time. */
export class Computer {
  disk: Record<string, unknown> = {};
  copies: Snapshot[] = [];
  crops = new Map<string, CropPair>();
  /** There is no room for crops. */
  noCrops = false;
  taught: readonly Take[] = [];
  time = moment(1_000_000_000_000);
  /** The disk refuses every write. */
  full = false;
  /** How long reading everything takes, where there is much. */
  reads: Promise<void> | null = null;
  /** Writes until the disk refuses them. */
  room = Infinity;
  /** Writes that were tried. */
  tries = 0;
  /** Writes until the power goes: then nothing is written or answered any more. */
  power = Infinity;
  /** Writes wait for this. */
  private busy: Promise<void> | null = null;
  /** The browser's, best liked first. */
  languages: readonly string[] = ['en-GB'];
  readonly log: string[] = [];
  readonly windows: Window[] = [];
  holder: Window | null = null;
  queue: Window[] = [];
  readonly account: Account;

  constructor(account = new Account()) {
    this.account = account;
    account.computers.push(this);
  }

  async open(): Promise<Window> {
    const window = new Window(this);
    this.windows.push(window);
    await window.session.ready;
    await settle();
    return window;
  }

  pass(time: number): void {
    this.time = moment(this.time + time * 1000);
  }

  /** Every write waits from now on, until the function that comes back is called. */
  stall(): () => Promise<void> {
    let go = (): void => undefined;
    this.busy = new Promise((done) => (go = done));
    return async () => {
      this.busy = null;
      go();
      await settle();
    };
  }

  async whenFree(): Promise<void> {
    await this.busy;
  }

  get isBusy(): boolean {
    return this.busy !== null;
  }

  written(changes: Record<string, unknown>): void {
    for (const { listener } of this.windows) listener?.(structuredClone(changes));
  }

  free(window: Window): void {
    this.queue = this.queue.filter((one) => one !== window);
    if (this.holder !== window) return;
    this.holder = this.queue.shift() ?? null;
    this.holder?.got();
  }

  /** The events of the live sweep on disk. */
  journal(): string[] {
    return ((this.disk['live'] ?? []) as { did: string }[]).map(({ did }) => did);
  }
}

export class Window {
  readonly session: Session;
  listener: Listener | null = null;
  onSynced: ((keys: readonly string[]) => void) | null = null;
  got: () => void = () => undefined;
  lost: () => void = () => undefined;
  ear: EarOwner | null = null;
  earOpen = false;
  earBy: RecognisedBy | null = null;
  deaf = 0;
  /** The languages that the page says it is in. */
  worn: Languages | null = null;
  /** Its time only runs, whatever becomes of the date. */
  steady = false;
  /** The route of sound is kept awake. */
  routeAwake = false;
  readonly loudnesses: number[] = [];
  /** The tone that sounds by itself when it is due. */
  foreseen: { readonly tone: string; readonly after: number } | null = null;
  /** How much later than it is asked for sound comes out. */
  late = seconds(0);
  /** No voice of the computer answers. */
  noVoice = false;
  /** Utterances end at once unless they are held back. */
  holdSpeech = false;
  /** Everything begun to be spoken; `whole` once it was heard to its end. */
  readonly speeches: { readonly text: string; whole: boolean }[] = [];
  private endSpeech: (() => void) | null = null;
  private readonly alarms = new Map<Alarm, { due: Moment; ring: (late: Seconds) => void }>();

  private readonly computer: Computer;

  constructor(computer: Computer) {
    this.computer = computer;
    this.session = createSession(this.ports());
  }

  /** The person tells this; everything that follows at once has followed. */
  async tell(word: Parameters<typeof inputOf>[0]): Promise<void> {
    this.session.input(inputOf(word, 'key'));
    await settle();
  }

  /** The time of the alarm comes. */
  async ring(alarm: Alarm, late = 0): Promise<void> {
    const set = this.alarms.get(alarm);
    if (!set) throw new Error(`no alarm ${alarm}`);
    this.alarms.delete(alarm);
    this.computer.time = moment(set.due + late * 1000);
    set.ring(seconds(late));
    await settle();
  }

  alarmsSet = (): Alarm[] => [...this.alarms.keys()];
  due = (alarm: Alarm): Moment | undefined => this.alarms.get(alarm)?.due;

  /** The window goes away without a word, as in a crash. */
  async crash(): Promise<void> {
    this.listener = null;
    this.alarms.clear();
    this.computer.windows.splice(this.computer.windows.indexOf(this), 1);
    this.computer.free(this);
    await settle();
  }

  async said(): Promise<void> {
    const speech = this.speeches.at(-1);
    if (speech && this.endSpeech) speech.whole = true;
    this.endSpeech?.();
    await settle();
  }

  private ports(): Ports {
    const { computer } = this;
    const { log } = computer;
    const write = (change: () => Record<string, unknown>): Promise<Result<undefined, StoreFault>> => {
      computer.tries += 1;
      if (computer.isBusy) return computer.whenFree().then(() => write(change));
      if (computer.full || computer.room === 0) return Promise.resolve(failed(NO_ROOM));
      computer.room -= 1;
      if (computer.power === 0) return new Promise(() => undefined);
      computer.power -= 1;
      computer.written(change());
      return Promise.resolve(got(undefined));
    };
    return {
      languages: {
        liked: () => computer.languages,
        wear: (languages) => {
          this.worn = languages;
        },
      },
      store: {
        read: async (tell) => {
          if (computer.reads) {
            tell?.({ done: 1000, of: 20_000 });
            await computer.reads;
          }
          return got(structuredClone(computer.disk));
        },
        readSome: (keys) => Promise.resolve(got(structuredClone(Object.fromEntries(Object.entries(computer.disk).filter(([key]) => keys.includes(key)))))),
        write: (entries) =>
          write(() => {
            computer.disk = structuredClone({ ...computer.disk, ...entries });
            log.push(`write ${Object.keys(entries).join(' ')}${'live' in entries ? ` ${computer.journal().at(-1)}` : ''}`);
            return entries;
          }),
        remove: (keys) =>
          write(() => {
            for (const key of keys) delete computer.disk[key];
            log.push(`remove ${keys.join(' ')}`);
            return Object.fromEntries(keys.map((key) => [key, undefined]));
          }),
        onChange: (listener) => {
          this.listener = listener;
        },
      },
      snapshots: () =>
        Promise.resolve({
          times: () => Promise.resolve(got(computer.copies.map(({ at }) => at).toSorted((a, b) => b - a))),
          read: (at) => {
            const copy = computer.copies.find((one) => one.at === at);
            return Promise.resolve(copy ? got(copy) : failed('copy unread'));
          },
          keep: (snapshot) => {
            computer.copies = [...computer.copies.filter(({ at }) => at !== snapshot.at), structuredClone(snapshot)];
            return Promise.resolve(got(undefined));
          },
        }),
      crops: () =>
        Promise.resolve({
          read: (name) => Promise.resolve(got(computer.crops.get(name) ?? null)),
          keep: (name, crops) => {
            if (computer.noCrops) return Promise.resolve(failed('crops not kept'));
            computer.crops.set(name, crops);
            return Promise.resolve(got(undefined));
          },
          erase: (name) => {
            computer.crops.delete(name);
            return Promise.resolve(got(undefined));
          },
        }),
      synced: () =>
        Promise.resolve({
          read: () => Promise.resolve(computer.account.down ? failed('no sync') : got(structuredClone(computer.account.carried))),
          write: (entries) => Promise.resolve(computer.account.change({ ...entries })),
          remove: (keys) => Promise.resolve(computer.account.change(Object.fromEntries(keys.map((key) => [key, undefined])))),
          onChange: (listener) => {
            this.onSynced = listener;
          },
        }),
      alone: (work) => work(),
      ownership: {
        claim: () => {
          computer.holder ??= this;
          return Promise.resolve(computer.holder === this);
        },
        queue: () => {
          if (computer.holder !== this && !computer.queue.includes(this)) computer.queue.push(this);
          if (computer.holder === null) computer.free(this);
        },
        take: () => {
          const before = computer.holder;
          computer.queue = computer.queue.filter((one) => one !== this);
          computer.holder = this;
          before?.lost();
          this.got();
        },
        release: () => computer.free(this),
        onGot: (listener) => {
          this.got = listener;
        },
        onLost: (listener) => {
          this.lost = listener;
        },
      },
      alarms: {
        set: (alarm, due, ring) => void this.alarms.set(alarm, { due, ring }),
        clear: () => this.alarms.clear(),
      },
      tones: {
        play: (tone, after, loudness) => {
          this.loudnesses.push(loudness);
          log.push(after === 0 ? `tone ${tone}` : `tone ${tone} in ${after}`);
          return seconds(0.1);
        },
        foresee: (tone, after) => void (this.foreseen = { tone, after }),
        cancel: () => undefined,
        wake: () => undefined,
        late: () => this.late,
      },
      speech: {
        say: (text, { loudness }) => {
          this.loudnesses.push(loudness);
          log.push(`say ${text}`);
          this.speeches.push({ text, whole: !this.holdSpeech });
          if (this.noVoice) return Promise.resolve('no voice');
          if (!this.holdSpeech) return Promise.resolve('said');
          return new Promise((end) => {
            this.endSpeech = () => {
              this.endSpeech = null;
              end('said');
            };
          });
        },
        voices: () => Promise.resolve([]),
        cancel: () => this.endSpeech?.(),
      },
      wakeLock: { keepAwake: () => undefined, release: () => undefined },
      ear: () =>
        Promise.resolve((owner) => {
          this.ear = owner;
          return {
            open: (by) => {
              this.earBy = by;
              this.earOpen = true;
            },
            close: () => {
              this.earOpen = false;
            },
            isOpen: () => this.earOpen,
            again: (here) => void log.push(here ? 'listen here' : 'listen again'),
            deafen: () => {
              this.deaf += 1;
              return () => {
                this.deaf -= 1;
              };
            },
          };
        }),
      route: () =>
        Promise.resolve({
          keep: (awake) => {
            this.routeAwake = awake;
          },
          runs: () => true,
        }),
      microphone: () => Promise.reject(new Error('no microphone here')),
      takes: () =>
        Promise.resolve({
          read: () => Promise.resolve(got(computer.taught)),
          all: () => Promise.resolve(got([ownWordsOf('en-US', computer.taught)])),
          change: (how) => {
            computer.taught = how(computer.taught) ?? computer.taught;
            return Promise.resolve(got(computer.taught));
          },
          erase: () => Promise.resolve(got(undefined)),
        }),
      browserRecognises: true,
      installed: { version: () => '0.1.0', browser: () => 'Heron 5', lastSeen: () => null, see: () => undefined, openShortcuts: null },
      now: () => computer.time,
      keepSteady: (on) => {
        this.steady = on;
      },
      newId: () => `id-${++ids}`,
      newSeed: () => 7,
      openPage: (page) => log.push(`open ${page}`),
    };
  }
}

/** Everything that waits for nothing but its turn has happened. */
export async function settle(): Promise<void> {
  await promisesKept();
  await vi.dynamicImportSettled();
  await promisesKept();
}

export async function promisesKept(): Promise<void> {
  for (let turn = 0; turn < 50; turn++) await Promise.resolve();
}
