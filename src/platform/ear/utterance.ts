// One utterance through the browser's recogniser, from its start to how it ended. Never waits for the browser's own end
// event, which may not come: every stage has a watchdog, and stopping is at once.
import type { Guess } from '../../voice/matching.ts';
import { browserRecogniser } from './available.ts';
import { heardIn } from './results.ts';

export type UtteranceEnd =
  /** A result was taken, or was the last one. */
  | 'heard'
  /** Silence, other sounds, or an end without a word. */
  | 'not heard'
  | 'stopped'
  | { readonly error: SpeechRecognitionErrorCode | 'no recogniser' | 'no answer' | 'not started' };

export interface OneListening {
  readonly track: MediaStreamTrack;
  readonly language: string;
  /** Recognise on this computer. */
  readonly local: boolean;
  /** What is likelier to be said than anything else; none where the recogniser is not to be told. */
  readonly phrases: readonly string[];
  readonly stop: AbortSignal;
  /** What is said from now on is about something else: where nothing is being said, a fresh utterance begins. */
  readonly passes: AbortSignal;
  /** The recogniser is taking sound in. */
  readonly onAudio: () => void;
  /** True when this is enough: the rest of the utterance is not waited for. `ago`: milliseconds since its sound began. */
  readonly onHeard: (candidates: readonly Guess[], final: boolean, ago: number) => boolean;
}

const TO_AUDIO = 4000;
/** The browser's own limit without speech is 8 s. */
const TO_SPEECH = 12_000;
const TO_GO_ON = 5000;
/** What is being said when the next step begins is about the one before: it is let go by for so long. */
const TO_FALL_SILENT = 1500;
/** How long a sound has gone on when the browser tells of it: from memory, no source. */
const TO_BE_TOLD = 150;
const GUESSES = 5;
/** From 0 to 10, how much likelier: common practice, no source. */
const BOOST = 5;

/** Not yet in the types: https://webaudio.github.io/web-speech-api/#speechreco-phraselist */
type Biased = SpeechRecognition & { phrases?: readonly object[] };
type PhraseMaker = new (phrase: string, boost: number) => object;

export function listenOnce(listening: OneListening): Promise<UtteranceEnd> {
  const Recogniser = browserRecogniser();
  if (!Recogniser) return Promise.resolve({ error: 'no recogniser' });
  if (listening.stop.aborted) return Promise.resolve('stopped');
  const over = new AbortController();
  return new Promise<UtteranceEnd>((resolve) => {
    const recogniser = new Recogniser();
    set(recogniser, listening);
    hear(recogniser, listening, over, resolve);
    recogniser.start(listening.track);
  }).catch((): UtteranceEnd => {
    over.abort();
    return { error: 'not started' };
  });
}

function set(recogniser: Biased, { language, local, phrases }: OneListening): void {
  recogniser.lang = language;
  recogniser.interimResults = true;
  recogniser.maxAlternatives = GUESSES;
  if (local) recogniser.processLocally = true;
  const Phrase = (globalThis as { SpeechRecognitionPhrase?: PhraseMaker }).SpeechRecognitionPhrase;
  if (Phrase && phrases.length > 0 && 'phrases' in recogniser) recogniser.phrases = phrases.map((phrase) => new Phrase(phrase, BOOST));
}

/** `over` is aborted when the utterance has ended. */
function hear(recogniser: SpeechRecognition, listening: OneListening, over: AbortController, resolve: (how: UtteranceEnd) => void): void {
  const { signal } = over;
  /** When its sound began: of speech, or else of any sound, or else of listening. */
  let began = performance.now();
  let isSounding = false;
  /** Finished results that were offered by themselves. */
  let offered = 0;

  const end = (how: UtteranceEnd): void => {
    if (signal.aborted) return;
    over.abort();
    recogniser.abort();
    resolve(how);
  };
  let watchdog = setTimeout(() => end({ error: 'no answer' }), TO_AUDIO);
  signal.addEventListener('abort', () => clearTimeout(watchdog));
  const within = (ms: number): void => {
    clearTimeout(watchdog);
    watchdog = setTimeout(() => end('not heard'), ms);
  };
  const on = <Name extends keyof SpeechRecognitionEventMap>(name: Name, then: (event: SpeechRecognitionEventMap[Name]) => void): void =>
    recogniser.addEventListener(name, then, { signal });

  listening.stop.addEventListener('abort', () => end('stopped'), { signal });
  listening.passes.addEventListener('abort', () => (isSounding ? setTimeout(() => end('stopped'), TO_FALL_SILENT) : end('stopped')), { signal });
  listening.track.addEventListener('ended', () => end({ error: 'audio-capture' }), { signal });
  on('audiostart', () => {
    within(TO_SPEECH);
    began = performance.now();
    listening.onAudio();
  });
  for (const start of ['soundstart', 'speechstart'] as const) {
    on(start, () => {
      began = performance.now() - TO_BE_TOLD;
      isSounding = true;
    });
  }
  for (const stop of ['speechend', 'soundend'] as const) {
    on(stop, () => {
      isSounding = false;
      if (listening.passes.aborted) end('stopped');
    });
  }
  on('result', ({ results }) => {
    within(TO_GO_ON);
    const [whole, ...single] = heardIn(results);
    if (!whole) return;
    const ago = performance.now() - began;
    const fresh = single.slice(0, Math.max(0, single.length - offered));
    offered = single.length;
    const taken = [whole, ...fresh].some(({ guesses, final }) => listening.onHeard(guesses, final, ago));
    if (taken || whole.final) end('heard');
  });
  on('nomatch', () => end('not heard'));
  on('error', ({ error }) => end(error === 'no-speech' ? 'not heard' : { error }));
  on('end', () => end('not heard'));
}
