// One utterance through the browser's recogniser, from its start to how it ended. Never waits for the browser's own end
// event, which may not come: every stage has a watchdog, and stopping is at once.
import { browserRecogniser } from './available.ts';
import type { Guess } from '../../voice/matching.ts';

export type UtteranceEnd =
  /** A result was taken, or was the last one. */
  | 'heard'
  /** Silence, other sounds, or an end without a word. */
  | 'not heard'
  | 'stopped'
  | { readonly error: SpeechRecognitionErrorCode | 'no recogniser' | 'no answer' };

export interface OneListening {
  readonly track: MediaStreamTrack;
  readonly language: string;
  /** Recognise on this computer. */
  readonly local: boolean;
  readonly stop: AbortSignal;
  /** The recogniser is taking sound in. */
  readonly onAudio: () => void;
  /** True when this is enough: the rest of the utterance is not waited for. */
  readonly onHeard: (candidates: readonly Guess[], final: boolean) => boolean;
}

const TO_AUDIO = 4000;
/** The browser's own limit without speech is 8 s. */
const TO_SPEECH = 12_000;
const TO_GO_ON = 5000;
const GUESSES = 5;

export function listenOnce(listening: OneListening): Promise<UtteranceEnd> {
  const Recogniser = browserRecogniser();
  if (!Recogniser) return Promise.resolve({ error: 'no recogniser' });
  const recogniser = new Recogniser();
  recogniser.lang = listening.language;
  recogniser.interimResults = true;
  recogniser.maxAlternatives = GUESSES;
  if (listening.local) recogniser.processLocally = true;

  return new Promise((resolve) => {
    const over = new AbortController();
    let watchdog = setTimeout(() => end({ error: 'no answer' }), TO_AUDIO);
    const end = (how: UtteranceEnd): void => {
      if (over.signal.aborted) return;
      over.abort();
      clearTimeout(watchdog);
      recogniser.abort();
      resolve(how);
    };
    const within = (ms: number): void => {
      clearTimeout(watchdog);
      watchdog = setTimeout(() => end('not heard'), ms);
    };
    const { signal } = over;

    listening.stop.addEventListener('abort', () => end('stopped'), { signal });
    listening.track.addEventListener('ended', () => end({ error: 'audio-capture' }), { signal });
    recogniser.addEventListener(
      'audiostart',
      () => {
        within(TO_SPEECH);
        listening.onAudio();
      },
      { signal },
    );
    recogniser.addEventListener(
      'result',
      ({ results }) => {
        within(TO_GO_ON);
        const last = results[results.length - 1];
        if (!last) return;
        const candidates = Array.from(last, ({ transcript }) => ({ text: transcript }));
        if (listening.onHeard(candidates, last.isFinal) || last.isFinal) end('heard');
      },
      { signal },
    );
    recogniser.addEventListener('nomatch', () => end('not heard'), { signal });
    recogniser.addEventListener('error', ({ error }) => end(error === 'no-speech' ? 'not heard' : { error }), { signal });
    recogniser.addEventListener('end', () => end('not heard'), { signal });

    if (listening.stop.aborted) end('stopped');
    else recogniser.start(listening.track);
  });
}
