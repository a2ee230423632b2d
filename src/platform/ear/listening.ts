// Listening goes on, utterance after utterance, until it is stopped: it waits while the panel speaks, gets the
// microphone back when it was lost, and backs off from a service that does not answer instead of calling it in circles.
import { knowsLocally, browserRecogniser } from './available.ts';
import type { Deaf } from '../../voice/deaf.ts';
import { faultOf, lineIn } from './lineIn.ts';
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
/** An end without a word that comes sooner than this is not silence but a fault. */
const TOO_SOON = 300;
const PATIENCE = 3;

/** `local`: on this computer or not at all. */
export async function keepListening(owner: EarOwner, local: boolean, deafness: Deafness, stop: AbortSignal): Promise<void> {
  if (!browserRecogniser()) return giveUp('no recogniser');
  if (local && !(await knowsLocally(owner.language.tag))) return giveUp('not on this computer');
  let track: MediaStreamTrack | null = null;
  let failures = 0;

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
    const end = await utterance(track);
    if (end === 'stopped') continue;
    if (isHopeless(end)) {
      track.stop();
      return giveUp('not usable');
    }
    const fault = typeof end === 'object' || (end === 'not heard' && performance.now() - began < TOO_SOON);
    failures = fault ? failures + 1 : 0;
    if (!fault) {
      owner.onDeaf(faultOf(track));
      continue;
    }
    if (isMicrophoneFault(end)) track.stop();
    if (failures >= PATIENCE) owner.onDeaf('no service');
    owner.onState('waiting');
    await pause(Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (failures - 1)), stop);
  }
  track?.stop();

  function utterance(live: MediaStreamTrack): Promise<UtteranceEnd> {
    owner.onState('starting');
    return listenOnce({
      track: live,
      language: owner.language.tag,
      local,
      stop: AbortSignal.any([stop, deafness.begins()]),
      onAudio: () => owner.onState('listening'),
      onHeard: (candidates, final) => owner.onHeard(candidates, final),
    });
  }

  function giveUp(why: Deaf): void {
    owner.onState('unavailable');
    owner.onDeaf(why);
  }
}

const isHopeless = (end: UtteranceEnd): boolean => typeof end === 'object' && (end.error === 'language-not-supported' || end.error === 'service-not-allowed');
const isMicrophoneFault = (end: UtteranceEnd): boolean => typeof end === 'object' && (end.error === 'audio-capture' || end.error === 'not-allowed');

const pause = (ms: number, stop: AbortSignal): Promise<void> =>
  new Promise((done) => {
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
