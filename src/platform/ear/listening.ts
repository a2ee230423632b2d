// Listening goes on, utterance after utterance, until it is stopped: it waits while the panel speaks, gets the microphone and
// the network back when they were lost, and backs off from a service that does not answer instead of calling it in circles.
import type { Deaf } from '../../voice/deaf.ts';
import { browserRecogniser, NOT_HERE, onThisComputer } from './available.ts';
import { faultOf, lineIn } from './lineIn.ts';
import { isOffline, networkGoes } from './network.ts';
import type { EarOwner } from './owner.ts';
import { listenOnce, type UtteranceEnd } from './utterance.ts';

/** Stops while the panel makes sounds of its own. */
export interface Deafness {
  isDeaf(): boolean;
  /** Resolves when nothing is sounding any more. */
  over(): Promise<void>;
  /** Aborts when the panel begins to sound; aborted already while it does. */
  begins(): AbortSignal;
}

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 30_000;
/** Nothing tells that the browser has, or has lost, what it takes to recognise here. */
const ASKED_AGAIN_AFTER = 2000;
/** An end without a word that comes sooner than this is not silence but a fault. */
const TOO_SOON = 300;
const PATIENCE = 3;

/** `local`: on this computer or not at all. */
export async function keepListening(owner: EarOwner, local: boolean, deafness: Deafness, stop: AbortSignal): Promise<void> {
  const { tag } = owner.language;
  let track = null as MediaStreamTrack | null;
  let failures = 0;
  /** Words are only told to a recogniser on this computer, until it does not want them. */
  let biased = local;
  try {
    if (browserRecogniser()) await listen();
    else giveUp('no recogniser');
  } finally {
    track?.stop();
  }

  async function listen(): Promise<void> {
    await untilHere();
    while (!stop.aborted) {
      if (deafness.isDeaf()) {
        owner.onState('deaf while speaking');
        await deafness.over();
        continue;
      }
      if (track?.readyState !== 'live') {
        track = await lineIn(owner, 'treated', stop);
        if (track === null) return;
      }
      const began = performance.now();
      const over = new AbortController();
      const lost = local ? over.signal : networkGoes('offline', AbortSignal.any([stop, over.signal]));
      const end = await utterance(track, lost);
      const isLost = lost.aborted;
      over.abort();
      if (isLost) await untilOnline(track);
      else if (end !== 'stopped') await after(end, track, performance.now() - began);
    }
  }

  /** Where it is to be heard on this computer only: asked again until it can be. */
  async function untilHere(): Promise<void> {
    if (!local) return;
    while (!stop.aborted) {
      const why = NOT_HERE[await onThisComputer(tag)];
      if (why === null) return owner.onDeaf(null);
      giveUp(why);
      await pause(ASKED_AGAIN_AFTER, stop);
    }
  }

  function utterance(live: MediaStreamTrack, lost: AbortSignal): Promise<UtteranceEnd> {
    owner.onState('starting');
    return listenOnce({
      track: live,
      language: tag,
      local,
      phrases: biased ? owner.wordsNow() : [],
      stop: AbortSignal.any([stop, deafness.begins(), lost]),
      passes: owner.passes(),
      onAudio: () => owner.onState('listening'),
      onHeard: (candidates, final, ago) => owner.onHeard(candidates, final, ago),
    });
  }

  /** What an end that was not asked for comes to. */
  async function after(end: Exclude<UtteranceEnd, 'stopped'>, live: MediaStreamTrack, took: number): Promise<void> {
    const error = typeof end === 'object' ? end.error : null;
    if (error === 'phrases-not-supported') return void (biased = false);
    if (error === null && !(end === 'not heard' && took < TOO_SOON)) {
      failures = 0;
      return owner.onDeaf(faultOf(live));
    }
    failures += 1;
    if (error === 'audio-capture' || error === 'not-allowed' || error === 'not started') live.stop();
    if (error === 'language-not-supported' || error === 'service-not-allowed') {
      live.stop();
      giveUp(error === 'language-not-supported' ? 'no language' : 'not usable');
      await pause(LONGEST_WAIT, stop);
      return untilHere();
    }
    if (failures >= PATIENCE) owner.onDeaf(isOffline() ? 'no network' : 'no service');
    owner.onState('waiting');
    if (await comesBack(Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (failures - 1)))) failures = 0;
  }

  /** Until the browser tells that it is back; it may never tell, so it is tried now and then. */
  async function untilOnline(live: MediaStreamTrack): Promise<void> {
    owner.onDeaf('no network');
    owner.onState('waiting');
    const isBack = await comesBack(LONGEST_WAIT);
    failures = 0;
    if (isBack) owner.onDeaf(faultOf(live));
  }

  /** Whether the browser told within so many milliseconds that the network is back. */
  async function comesBack(ms: number): Promise<boolean> {
    const over = new AbortController();
    const online = networkGoes('online', AbortSignal.any([stop, over.signal]));
    await pause(ms, AbortSignal.any([stop, online]));
    over.abort();
    return online.aborted;
  }

  function giveUp(why: Deaf): void {
    owner.onState('unavailable');
    owner.onDeaf(why);
  }
}

const pause = (ms: number, stop: AbortSignal): Promise<void> =>
  new Promise((done) => {
    if (stop.aborted) return done();
    const timer = setTimeout(done, ms);
    stop.addEventListener(
      'abort',
      () => {
        clearTimeout(timer);
        done();
      },
      { once: true },
    );
  });
