// Carries the effects of a sweep out, one after another, so that an event is on disk before anything is said about it.
// A step that was taken cuts short whatever is still to be said, sounded or waited for; what is to be kept is always kept.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Alarm, Effect, Prompt, Tone } from '../../sweep/effect.ts';
import type { SweepEvent } from '../../sweep/event.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import { between, moment, type Moment, type Seconds } from '../../units.ts';
import { isBrief } from '../../voice/brief.ts';
import { asSpoken } from '../../words/asSpoken.ts';
import { aloud, saidAndShown, words } from '../../words/catalogue.ts';
import type { InWords } from '../../words/inWords.ts';
import type { Settings } from '../../settings.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';

/** Without written words the screen shows it in a place of its own, and the latest prompt stands. */
type Said = Pick<InWords, 'spoken'> & Partial<InWords>;

export interface Carrier {
  /** The latest prompt in words, until it has been heard; then empty. */
  readonly announcement: ReadonlySignal<string>;
  /** `at`: the moment of the event that the effects come from. */
  carry(effects: readonly Effect[], at: Moment): void;
  /** Says something that belongs to no step, in place of what is being said beside the sweep; its clock runs on. */
  tell(words: Said): void;
  /** Says this when what is being said has been said, unless the sweep moves first. */
  tellNext(words: Said): void;
  /** Says this after what is being said; what is shown and announced stays. */
  sayBeside(spoken: string): void;
  /** What was last said could not be spoken: no voice on this computer answers. */
  readonly mute: ReadonlySignal<boolean>;
  /** Does this in its turn, whatever comes meanwhile. */
  inTurn(work: () => Promise<void> | void): void;
  /** Cuts off what is being said, and nothing else. */
  hush(): void;
  /** Cuts off everything that is not to be kept. */
  silence(): void;
}

/** What a carrier does with effects that are not its own business. */
export interface CarrierOwner {
  keep(event: SweepEvent): Promise<void>;
  record(outcome: Outcome): Promise<void>;
  ring(alarm: Alarm, due: Moment, late: Seconds): void;
}

export type CarrierWorld = Pick<Ports, 'alarms' | 'tones' | 'speech' | 'now'> & {
  readonly settings: ReadonlySignal<Settings>;
  readonly troubles: Mishaps;
  readonly deafen: () => () => void;
};

/**
 * How long an announcement stands, in milliseconds: a slow screen reader has read it by then (14 letters a second, common practice, no
 * source). What stays would be read again as part of the screen, long after it was true.
 */
const announcedFor = (written: string): number => 4000 + 70 * written.length;

/** Seconds after which a person knows the prompts (common practice, no source). */
const FIRST_MINUTES = 180;

export function createCarrier(world: CarrierWorld, owner: CarrierOwner): Carrier {
  const announcement = signal('');
  const mute = signal(false);
  let heardBy: ReturnType<typeof setTimeout> | undefined;
  let turn = Promise.resolve();
  /** Steps taken so far; what an earlier one still wanted to say is dropped. */
  let latest = 0;
  /** The newest thing told: an older one that still waits is dropped. */
  let newest: Said | null = null;
  /** When the first step was carried out here. */
  let first: Moment | null = null;
  const isUsedToIt = (): boolean => first !== null && between(first, world.now()) > FIRST_MINUTES;

  function inTurn(work: () => Promise<void> | void): void {
    turn = turn.then(work).catch((fault: unknown) => {
      world.troubles.add('unexpected', words('session').unexpected(String(fault)));
    });
  }

  function silence(): void {
    latest += 1;
    world.alarms.clear();
    world.tones.cancel();
    world.speech.cancel();
  }

  function inWords(prompt: Prompt): InWords {
    const whole = saidAndShown('spoken', (say) => say.prompt(prompt));
    return isUsedToIt() && isBrief(prompt) ? { ...whole, spoken: aloud('spoken').brief(prompt) } : whole;
  }

  function say({ spoken, written }: Said): Promise<void> {
    if (written !== undefined) announce(written);
    return speak(spoken);
  }

  function announce(written: string): void {
    clearTimeout(heardBy);
    announcement.value = asSpoken(written);
    heardBy = setTimeout(() => {
      announcement.value = '';
    }, announcedFor(written));
  }

  async function speak(spoken: string): Promise<void> {
    const { voice, loudness } = world.settings.peek();
    if (!voice.speak || spoken === '') return;
    const hearAgain = world.deafen();
    mute.value = (await world.speech.say(asSpoken(spoken), { ...voice, loudness })) === 'no voice';
    hearAgain();
  }

  function sound(tone: Tone, after: Seconds): void {
    const settings = world.settings.peek();
    if (!settings.sound) return;
    const length = world.tones.play(tone, after, settings.loudness);
    const step = latest;
    setTimeout(() => {
      if (step === latest) setTimeout(world.deafen(), length * 1000);
    }, after * 1000);
  }

  /** By the audio clock, which is on time where the alarm of the hold is not. */
  function foreseeEnd(due: Moment): void {
    const settings = world.settings.peek();
    if (settings.sound) world.tones.foresee('end', between(world.now(), due), settings.loudness);
  }

  function wake(alarm: Alarm, after: Seconds, at: Moment): void {
    // The hold began with its event, however long the disk took; the other waits begin when their turn comes.
    const from = alarm === 'hold time' ? at : world.now();
    const due = moment(from + after * 1000);
    if (alarm === 'hold time') foreseeEnd(due);
    world.alarms.set(alarm, due, (late) => owner.ring(alarm, due, late));
  }

  function perform(effect: Effect, at: Moment): Promise<void> | void {
    switch (effect.do) {
      case 'keep':
        return owner.keep(effect.event);
      case 'record':
        return owner.record(effect.outcome);
      case 'clear alarms':
        return world.alarms.clear();
      case 'sound':
        return sound(effect.tone, effect.after);
      case 'say':
        return say(inWords(effect.prompt));
      case 'wake':
        return wake(effect.alarm, effect.after, at);
    }
  }

  return {
    announcement,
    mute,
    sayBeside: (spoken) => inTurn(() => speak(spoken)),
    inTurn,
    silence,
    hush: () => world.speech.cancel(),
    carry(effects, at) {
      first ??= at;
      if (effects.some((effect) => effect.do === 'keep')) silence();
      else if (effects.length > 0) world.speech.cancel();
      const step = latest;
      for (const effect of effects) {
        const lasting = effect.do === 'keep' || effect.do === 'record';
        inTurn(() => (lasting || step === latest ? perform(effect, at) : undefined));
      }
    },
    tellNext(words) {
      const step = latest;
      inTurn(() => (step === latest ? say(words) : undefined));
    },
    tell(words) {
      world.speech.cancel();
      newest = words;
      const step = latest;
      inTurn(() => (step === latest && newest === words ? say(words) : undefined));
    },
  };
}
