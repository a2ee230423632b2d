// A session in memory for looking at the screens: the real reducer and the real reading of inputs, no browser behind it.
// Time moves only when the test moves it.
import { signal } from '@preact/signals';
import { newBody, newLens, subjectIn, type Kit } from '../../src/kit/kit.ts';
import { restored } from '../../src/logbook/backup/restore.ts';
import type { LogRecord } from '../../src/logbook/record.ts';
import type { Contents } from '../../src/logbook/stored.ts';
import { libraryIn } from '../../src/panel/session/libraryIn.ts';
import { createEnding } from '../../src/panel/session/ending.ts';
import { createJob } from '../../src/panel/session/job.ts';
import { createDescribing } from '../../src/panel/session/describing.ts';
import { createKitForms } from '../../src/panel/session/kitForms.ts';
import { createLibrary } from '../../src/panel/session/library.ts';
import { settled } from '../../src/panel/session/settled.ts';
import { createWritings } from '../../src/panel/session/writings.ts';
import type { CropPair } from '../../src/platform/keptCrops.ts';
import { DONE, got, failed } from '../../src/result.ts';
import type { Attendant, EarState, Heard, LeftFor, Role, Session, SoundHeard, Mishap } from '../../src/panel/session/session.ts';
import type { Microphone } from '../../src/platform/ear/asking.ts';
import type { Deaf, RecognisedBy } from '../../src/voice/deaf.ts';
import type { StoredBench } from '../../src/sweep/storedBench.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import type { SweepEvent } from '../../src/sweep/event.ts';
import type { Asked, Input } from '../../src/sweep/inputs.ts';
import { meaning } from '../../src/sweep/meaning.ts';
import { lookAgainAt, moveSwitch, RELEASED, type Contact } from '../../src/sweep/oneSwitch.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import type { Plan, Subject } from '../../src/sweep/plan.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { transition } from '../../src/sweep/transition.ts';
import { isStanding, understood } from '../../src/sweep/understood.ts';
import { words } from '../../src/words/catalogue.ts';
import { millimetres, moment, steps, type Moment } from '../../src/units.ts';
import type { InWords } from '../../src/words/inWords.ts';
import { DISK_AT_ONCE } from './session/diskAtOnce.ts';

export const SUBJECT: Subject = {
  situation: 'orrin-85-near',
  body: 'Velde M1',
  lens: 'Orrin 85 f/1.8',
  focalLength: millimetres(85),
  distance: millimetres(4250),
};

export const PLAN: Plan = {
  subject: SUBJECT,
  scale: USUAL_SCALE,
  arrows: 'absent',
  manner: USUAL_SETTINGS.manner,
  memory: NO_MEMORY,
  start: steps(0),
  practice: null,
};

export const KIT: Kit = {
  bodies: [newBody('m1', 'Velde M1', moment(0))],
  lenses: [newLens('orrin-85', 'Orrin 85 f/1.8', moment(0))],
  converters: [],
  situations: [
    {
      id: 'orrin-85-near',
      changed: moment(0),
      retired: null,
      body: 'm1',
      lens: 'orrin-85',
      converter: null,
      focalLength: millimetres(85),
      distance: millimetres(4250),
    },
  ],
};

interface World {
  readonly kit?: Kit;
  readonly plan?: Plan;
  readonly records?: readonly LogRecord[];
  readonly byHand?: Contents['byHand'];
  readonly entries?: Contents['entries'];
  readonly notes?: Contents['notes'];
  readonly proofs?: Contents['proofs'];
}

const OPENED = moment(Date.UTC(2026, 10, 20, 9, 0, 0));

export class FakeSession implements Session {
  readonly ready = Promise.resolve();
  readonly reading = signal<number | null>(null);
  readonly bringing = signal<number | null>(null);
  readonly sweep = signal<SweepState | null>(null);
  readonly role = signal<Role>('owner');
  /** What a test says is not on disk yet, and what it says of the disk. */
  readonly unwritten = signal<ReadonlySet<string>>(new Set());
  disk = Promise.resolve(true);
  readonly #library = createLibrary({ ...DISK_AT_ONCE, written: () => this.disk, unwritten: this.unwritten }, settled);
  readonly kit = this.#library.kit;
  readonly records = this.#library.records;
  readonly byHand = this.#library.byHand;
  readonly entries = this.#library.entries;
  readonly notes = this.#library.notes;
  readonly proofs = this.#library.proofs;
  readonly settings = this.#library.settings;
  readonly plan = this.#library.plan;
  readonly backedUp = this.#library.backedUp;
  readonly onDisk = (): Promise<boolean> => this.disk;
  readonly troubles = signal<readonly Mishap[]>([]);
  readonly announcement = signal('');
  readonly heard = signal<Heard | null>(null);
  readonly ear = signal<EarState>('off');
  readonly deaf = signal<Deaf | null>(null);
  readonly mute = signal(false);
  /** What the browser would say of the microphone. */
  readonly mic = {
    allowed: 'prompt' as PermissionState,
    asked: { why: 'not asked', atOnce: false } as Awaited<ReturnType<Microphone['ask']>>,
    proposed: 'browser' as RecognisedBy,
    downloadable: false,
    /** Ends the download under way. */
    downloaded: (_came: boolean): void => undefined,
    inTheWay: null as Deaf | null,
  };
  taughtWords: readonly string[] = [];
  soundHeard: SoundHeard = { tones: 'sounded', speech: 'said' };
  readonly understood = signal<ReturnType<typeof understood> | null>(null);
  readonly pressAsked = signal<Asked | null>(null);
  readonly pressed = signal<Moment | null>(null);
  readonly now = signal<Moment>(OPENED);
  /** What the screens asked for that has no place in a signal. */
  readonly asked: string[] = [];
  readonly said: string[] = [];
  listener: Attendant | null = null;
  noted: StoredBench | null = null;
  #switch = RELEASED;
  #plan: Plan;

  constructor({ kit = KIT, plan = PLAN, records = [], byHand = [], entries = [], notes = [], proofs = [] }: World = {}) {
    this.#library.take({ kit, records, byHand, entries, notes, proofs, settings: USUAL_SETTINGS, live: null, plan: null, backup: null });
    this.#plan = plan;
  }

  /** Opens a sweep on the plan. */
  open(): this {
    this.#show(openSweep({ did: 'opened', at: this.now.value, id: 'sweep', plan: this.#plan }).state);
    return this;
  }

  /** One whole hold: begun, held as long as it takes, judged. */
  hold(light: 'steady' | 'late' | 'flicker' | 'dark', value = this.#next(), arrows: 'none' | 'left' | 'right' | 'balanced' = 'none'): this {
    this.#dispatch({ did: 'began', at: this.now.value, value: steps(value), by: 'key' });
    this.pass(light === 'steady' ? 5 : 2);
    this.input({ told: 'verdict', verdict: { light, arrows }, by: 'voice', heard: light });
    this.pass(4);
    return this;
  }

  /** Lets time go by, and rings what would ring meanwhile. */
  pass(time: number): this {
    this.now.value = moment(this.now.value + time * 1000);
    this.#move({ move: 'none', at: this.now.value });
    if (this.sweep.value?.phase.name === 'holding') this.#dispatch({ did: 'ran', at: this.now.value });
    return this;
  }

  /** The sweep, once it is finished, as the logbook would keep it. */
  asRecord(id: string): LogRecord {
    const state = this.sweep.value;
    if (state?.phase.name !== 'finished') throw new Error('The sweep is not finished.');
    const { plan, phase, journal } = state;
    return { id, finished: phase.at, practice: plan.practice !== null, subject: plan.subject as Subject, outcome: phase.outcome, journal: [...journal] };
  }

  input(input: Input): void {
    if (this.listener && input.told === 'press') return this.listener.take(input);
    const state = this.sweep.value;
    if (state === null) return;
    const meant = meaning(input, state, this.now.value, this.pressAsked.value);
    if (meant.means === 'asked') {
      this.pressAsked.value = meant.about;
      this.understood.value = understood(state, meant.about);
    }
    let became = '';
    if (meant.means === 'events') {
      for (const event of meant.events) became = this.#became(event);
    } else if (meant.means === 'entered') {
      became = this.#ending.mark(state).words();
    } else if (meant.means === 'undo') {
      const event = { did: 'undid', at: this.now.value, by: 'key' } as const;
      became = this.#ending.takeBack(state)?.words() ?? this.#became(event);
    } else if (meant.means === 'next lens') {
      this.nextLens();
    } else if (meant.means === 'far view') {
      this.changeSettings({ look: { far: !this.settings.value.look.far } });
    } else {
      this.asked.push(meant.means);
    }
    this.heard.value = { words: words('sweep').heard.told(input), became, by: 'by' in input ? input.by : 'switch', at: this.now.value };
  }

  contact(move: 'down' | 'up'): void {
    const phase = this.listener ? ({ name: 'holding' } as const) : this.sweep.value?.phase;
    if (!phase) return;
    this.pressed.value = move === 'down' ? this.now.value : null;
    this.#move(move === 'down' ? { move, at: this.now.value, during: phase.name } : { move, at: this.now.value });
  }

  async begin(beginning: Parameters<Session['begin']>[0]): ReturnType<Session['begin']> {
    this.asked.push([`begin with ${beginning.with}`, ...howIn(beginning)].filter(Boolean).join(', '));
    if (beginning.with === 'kit' || beginning.with === 'told') this.noted = beginning.bench ?? null;
    if (beginning.with === 'told') {
      const opening = this.#describing.opening(beginning.about);
      if (!opening.ok) return failed(opening.fault.sentence);
      this.#plan = { ...this.#plan, subject: opening.value.subject, ...opening.value.onBody };
    }
    this.open();
    return DONE;
  }

  leave(): void {
    this.leftFor.value = null;
    this.#show(null);
  }

  readonly leftFor = signal<LeftFor | null>(null);
  nextLens(name?: string): void {
    this.leftFor.value = this.sweep.value?.plan.practice ? null : { name: name ?? null };
    this.#show(null);
  }

  #ids = 0;
  readonly #newId = () => `id-${++this.#ids}`;
  readonly clock = () => this.now.value;
  readonly #forms = createKitForms(this.#library, this.#newId, this.clock);
  readonly #writings = createWritings(this.#library, this.#newId);
  readonly #ending = createEnding({
    library: this.#library,
    carrier: { inTurn: () => undefined, tell: ({ spoken, written }) => void (this.said.push(spoken), (this.announcement.value = written ?? '')) },
    now: this.clock,
    newId: this.#newId,
    named: () => this.#describing.named(),
  });
  propose: Session['propose'] = this.#ending.propose;
  saveBody: Session['saveBody'] = this.#forms.saveBody;
  saveLens: Session['saveLens'] = this.#forms.saveLens;
  saveSituation: Session['saveSituation'] = this.#forms.saveSituation;
  putKit: Session['putKit'] = this.#forms.putKit;
  retireKit: Session['retireKit'] = this.#forms.retireKit;
  readonly #describing = createDescribing(this.#library, this.#forms, {
    sweep: this.sweep,
    rework: (change) => {
      const state = this.sweep.value;
      const again = state && change(state.journal, state);
      if (again) this.#show(again.state);
      return again !== null;
    },
  });
  describe: Session['describe'] = (told) => this.#describing.describe(told);
  named: Session['named'] = () => this.#describing.named();
  nameKept: Session['nameKept'] = (situation, told) => this.#describing.nameKept(situation, told);
  situationFor: Session['situationFor'] = (about) => this.#describing.situationFor(about);
  planJob: Session['planJob'] = createJob(this.#library, this.clock).planJob;
  enter: Session['enter'] = this.#writings.enter;
  writeByHand: Session['writeByHand'] = this.#writings.writeByHand;
  noteOn: Session['noteOn'] = this.#writings.noteOn;
  tellConditions: Session['tellConditions'] = this.#writings.tellConditions;
  changeSettings: Session['changeSettings'] = this.#library.changeSettings;
  syncValues: Session['syncValues'] = (on) => this.#library.changeSettings({ logbook: { sync: on ? 'here' : null } });
  copies: Session['copies'] = () => Promise.resolve(got([]));
  bring: Session['bring'] = (library, how) => {
    this.asked.push(how);
    const kept = { settings: this.settings.value, live: null, plan: this.plan.value, backup: this.backedUp.value };
    this.#library.take({ ...kept, ...restored(libraryIn(this), library, how) });
    return Promise.resolve(DONE);
  };
  bringBack: Session['bringBack'] = () => Promise.resolve(DONE);
  taught: Session['taught'] = () => Promise.resolve(got(this.taughtWords.map((word) => ({ word, noise: [], frames: [] }))));
  microphone: Session['microphone'] = () =>
    Promise.resolve({
      allowed: () => Promise.resolve(this.mic.allowed),
      ask: () => {
        this.asked.push('ask for the microphone');
        return Promise.resolve(this.mic.asked);
      },
      changed: (stop) => new Promise((over) => stop.addEventListener('abort', () => over())),
      inTheWay: () => Promise.resolve(this.mic.inTheWay),
      proposed: () => Promise.resolve(this.mic.proposed),
      downloadable: () => Promise.resolve(this.mic.downloadable),
      download: () => {
        this.asked.push('download');
        return new Promise((over) => {
          this.mic.downloaded = over;
        });
      },
    });
  listenAgain = (here: boolean): void => void this.asked.push(here ? 'listen here' : 'listen again');
  trySound = (): Promise<SoundHeard> => {
    this.asked.push('try the sound');
    return Promise.resolve(this.soundHeard);
  };
  bringTaught: Session['bringTaught'] = () => Promise.resolve(DONE);
  taughtInAll: Session['taughtInAll'] = () => Promise.resolve(got([]));
  say({ spoken, written }: InWords): void {
    this.said.push(spoken);
    this.announcement.value = written;
  }
  /** The crops that lie beside what photographs showed, by their name. */
  readonly crops = new Map<string, CropPair>();
  keepProof: Session['keepProof'] = async (situation, proof, crops, practice = false) => {
    const kit = this.kit.value;
    const subject = subjectIn(
      kit,
      kit.situations.find(({ id }) => id === situation)!,
    );
    const id = `proof-${this.proofs.value.length + 1}`;
    this.crops.set(id, crops);
    await this.#library.addProof({ id, at: this.now.value, practice, subject, proof, crops: id });
    return got(id);
  };
  eraseProof: Session['eraseProof'] = async (id) => {
    await this.#library.withdrawProof(id);
    return DONE;
  };
  cropsOf: Session['cropsOf'] = ({ crops }) => Promise.resolve(got(crops === null ? null : (this.crops.get(crops) ?? null)));
  eraseCrops: Session['eraseCrops'] = (id) => {
    const record = this.proofs.value.find((one) => one.id === id);
    this.crops.delete(record?.crops ?? '');
    return Promise.resolve(DONE);
  };
  eraseHeard: Session['eraseHeard'] = () => Promise.resolve(DONE);
  sayNext = (words: InWords): void => this.say(words);
  sayShown = (sentence: string): void => void this.said.push(sentence);
  backUp = (at: Moment): void => this.#library.backUp(at);

  takeOver(): void {
    this.role.value = 'owner';
  }

  browserRecognises = true;
  /** The version that was open last, and whether the browser's own shortcuts can be opened. */
  seen: string | null = null;
  shortcutsOpen = true;
  get installed(): Session['installed'] {
    return {
      version: () => '0.1.0',
      browser: () => 'Heron 5',
      lastSeen: () => this.seen,
      see: () => void (this.seen = '0.1.0'),
      openShortcuts: this.shortcutsOpen ? () => void this.asked.push('shortcuts') : null,
    };
  }
  voices = (): Promise<readonly string[]> => Promise.resolve(['Fen', 'Moor']);
  openPage(page: string): void {
    this.asked.push(page);
  }

  attend(listener: Attendant): () => void {
    this.listener = listener;
    return () => {
      if (this.listener === listener) this.listener = null;
    };
  }

  noteBench(bench: StoredBench): boolean {
    this.noted = bench;
    return true;
  }

  dismiss(id: string): void {
    this.troubles.value = this.troubles.value.filter((trouble) => trouble.id !== id);
  }

  #next(): number {
    const { phase } = this.sweep.value ?? {};
    return phase && 'next' in phase ? phase.next.value : 0;
  }

  #move(contact: Contact): void {
    const moved = moveSwitch(this.#switch, contact);
    this.#switch = moved.state;
    moved.presses.forEach((press) => this.input(press));
    const again = lookAgainAt(moved.state);
    if (contact.move === 'none' && again !== null && again <= this.now.value) this.#move(contact);
  }

  readonly #became = (event: SweepEvent): string => words('sweep').heard.became(event, this.#dispatch(event).holds.at(-1) ?? null);

  #dispatch(event: SweepEvent): SweepState {
    if (this.sweep.value === null) throw new Error('There is no sweep.');
    const { state } = transition(this.sweep.value, event);
    this.#show(state);
    return state;
  }

  #show(state: SweepState | null): void {
    this.sweep.value = state;
    if (this.pressAsked.value && !(state && isStanding(this.pressAsked.value, state))) this.pressAsked.value = null;
    this.understood.value = state && understood(state, this.pressAsked.value);
    this.announcement.value = state ? `now ${state.phase.name}` : '';
  }
}

function howIn(beginning: Parameters<Session['begin']>[0]): readonly unknown[] {
  switch (beginning.with) {
    case 'practice':
      return [beginning.arrows, beginning.band, beginning.odd && 'odd'];
    case 'told':
      return [];
    case 'kit':
      return [beginning.care];
    case 'transfer':
      return [beginning.record];
  }
}
