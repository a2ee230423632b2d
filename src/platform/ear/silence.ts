// A microphone that is open and hands over nothing at all: switched off where no browser sees it, or the wrong one. Real ones
// always carry some noise, so it is exact silence that tells. Some fall silent between words: each is given longer.

/** Milliseconds between looks, each at all the sound since the one before. */
const LOOKED_EVERY = 300;
const SAMPLES = 16_384;
/** How long nothing at all may come, in milliseconds. */
const PATIENCE = 2400;

/** Tells when the track falls silent, and when it is heard again; stops with the track or the signal. */
export function watchForSilence(track: MediaStreamTrack, onChange: (silent: boolean) => void, stop: AbortSignal): void {
  const sound = listenTo(track);
  if (!sound) return;
  const samples = new Float32Array(SAMPLES);
  let quiet = 0;
  let patience = PATIENCE;
  let silent = false;
  const look = (): void => {
    if (track.readyState === 'ended') return over();
    // Held back, nothing is known.
    if (sound.context.state !== 'running' || track.muted) return void (quiet = 0);
    sound.analyser.getFloatTimeDomainData(samples);
    const isSilence = samples.every((sample) => sample === 0);
    quiet = isSilence ? quiet + LOOKED_EVERY : 0;
    if (isSilence === silent || (isSilence && quiet < patience)) return;
    silent = isSilence;
    if (!silent) patience *= 2;
    onChange(silent);
  };
  const timer = setInterval(look, LOOKED_EVERY);
  const over = (): void => {
    clearInterval(timer);
    void sound.context.close();
  };
  stop.addEventListener('abort', over, { once: true });
  if (stop.aborted) over();
}

function listenTo(track: MediaStreamTrack): { readonly context: AudioContext; readonly analyser: AnalyserNode } | null {
  try {
    const context = new AudioContext();
    const analyser = new AnalyserNode(context, { fftSize: SAMPLES });
    new MediaStreamAudioSourceNode(context, { mediaStream: new MediaStream([track]) }).connect(analyser);
    return { context, analyser };
  } catch {
    return null;
  }
}
