// Speaking, under a watchdog: on some systems an utterance never ends, and on some there is no voice at all. Only voices
// of this computer are used, so that no text leaves it.

export interface Speech {
  /** Ends when it has been said, cut off, or given up: then no voice on this computer answers. `loudness`: 0 to 1. */
  say(text: string, manner: { readonly rate: number; readonly voice: string; readonly loudness: number }): Promise<'said' | 'no voice'>;
  /** The names of the voices there are to choose from. */
  voices(): Promise<readonly string[]>;
  /** Cuts off what is being said. */
  cancel(): void;
}

const VOICES_WITHIN = 3000;
/** Slow speech takes about 0.1 s a letter; twice that, and a start, is time enough. */
const PER_LETTER = 200;
const TO_START = 2500;
/** After so many utterances in a row that never ended it is only tried now and then, or every prompt would wait for it. */
const GIVEN_UP_AFTER = 2;
const TRIED_AGAIN_AFTER = 60_000;

export function createSpeaking(language: () => string): Speech {
  if (!('speechSynthesis' in globalThis)) {
    return { say: () => Promise.resolve('no voice'), voices: () => Promise.resolve([]), cancel: () => undefined };
  }
  let cut: () => void = () => undefined;
  let silent = 0;
  let lastTried = 0;
  const found = new Map<string, Promise<SpeechSynthesisVoice[]>>();
  speechSynthesis.addEventListener('voiceschanged', () => {
    found.clear();
    silent = 0;
  });

  function fitting(): Promise<SpeechSynthesisVoice[]> {
    const tag = language();
    const voices = found.get(tag) ?? findVoices(tag);
    found.set(tag, voices);
    return voices;
  }

  async function say(text: string, { rate, voice, loudness }: Parameters<Speech['say']>[1]): ReturnType<Speech['say']> {
    cut();
    if (silent >= GIVEN_UP_AFTER && performance.now() - lastTried < TRIED_AGAIN_AFTER) return 'no voice';
    lastTried = performance.now();
    const cutOff = new Promise<'cut'>((end) => {
      cut = () => end('cut');
    });
    const voices = await Promise.race([fitting(), cutOff]);
    if (voices === 'cut') return 'said';
    const [best] = voices;
    if (!best) return 'no voice';
    const ended = await Promise.race([utter(text, { rate, loudness }, voices.find(({ name }) => name === voice) ?? best), cutOff]);
    silent = ended === 'unanswered' ? silent + 1 : 0;
    return ended === 'unanswered' ? 'no voice' : 'said';
  }

  return {
    say,
    voices: async () => (await fitting()).map(({ name }) => name),
    cancel() {
      cut();
      speechSynthesis.cancel();
    },
  };
}

function utter(
  text: string,
  { rate, loudness }: { readonly rate: number; readonly loudness: number },
  voice: SpeechSynthesisVoice,
): Promise<'said' | 'unanswered'> {
  const utterance = new SpeechSynthesisUtterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.rate = rate;
  utterance.volume = loudness;
  return new Promise((end) => {
    const watchdog = setTimeout(
      () => {
        speechSynthesis.cancel();
        end('unanswered');
      },
      TO_START + (text.length * PER_LETTER) / rate,
    );
    const finish = (how: 'said' | 'unanswered'): void => {
      clearTimeout(watchdog);
      end(how);
    };
    utterance.addEventListener('end', () => finish('said'));
    utterance.addEventListener('error', ({ error }) => finish(ITS_OWN_FAULT.has(error) ? 'unanswered' : 'said'));
    speechSynthesis.speak(utterance);
  });
}

/** The others are cuts of ours, or a page that nobody has touched yet. */
const ITS_OWN_FAULT: ReadonlySet<string> = new Set(['synthesis-failed', 'synthesis-unavailable', 'voice-unavailable', 'audio-hardware']);

/** The voices of this computer for the language, the best first. Browsers fill the list some time after the start. */
async function findVoices(language: string): Promise<SpeechSynthesisVoice[]> {
  if (speechSynthesis.getVoices().length === 0) {
    await new Promise((ready) => {
      speechSynthesis.addEventListener('voiceschanged', ready, { once: true });
      setTimeout(ready, VOICES_WITHIN);
    });
  }
  const tongue = language.slice(0, 2);
  const fitting = speechSynthesis.getVoices().filter(({ localService, lang }) => localService && lang.startsWith(tongue));
  const rank = (one: SpeechSynthesisVoice): number => (one.default ? 2 : 0) + (one.lang === language ? 1 : 0);
  return fitting.toSorted((a, b) => rank(b) - rank(a));
}
