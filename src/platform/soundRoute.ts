// Keeps the way to the loudspeaker awake: a wireless one that falls asleep in a pause swallows the beginning of the next
// tone. What it runs is below what is heard.
export interface SoundRoute {
  keep(awake: boolean): void;
  /** Whether sound comes out at all: where it does not, the audio clock stands still. Asked after it was kept awake a while. */
  runs(): boolean;
}

/** In pitch and in loudness (-66 dB): common practice, no source. */
const UNHEARD = { hertz: 20, loudness: 0.0005 };

export function createSoundRoute(): SoundRoute {
  let context: AudioContext | null = null;
  return {
    keep(awake) {
      if (awake === (context !== null)) return;
      if (!awake) {
        void context?.close();
        context = null;
        return;
      }
      try {
        context = new AudioContext({ latencyHint: 'interactive' });
        const source = new OscillatorNode(context, { frequency: UNHEARD.hertz });
        source.connect(new GainNode(context, { gain: UNHEARD.loudness })).connect(context.destination);
        source.start();
      } catch {
        context = null;
      }
    },
    runs: () => (context?.currentTime ?? 0) > 0,
  };
}
