// A microphone that is open and hands over nothing at all: switched off where no browser sees it, or the wrong one. Real ones
// always carry some noise, so it is exact silence that tells. Some fall silent between words: each is given longer.

/** Milliseconds between looks, each at all the sound since the one before. */
const LOOKED_EVERY = 300;
const SAMPLES = 16_384;
/** How long nothing at all may come, in milliseconds. */
const PATIENCE = 2400;

/** Told at each look whether nothing came since the last: true when it is to be called silent, false when no longer, else null. */
export function silenceNoticed(): (isSilence: boolean) => boolean | null {
  let quiet = 0;
  let patience = PATIENCE;
  let silent = false;
  return (isSilence) => {
    quiet = isSilence ? quiet + LOOKED_EVERY : 0;
    if (isSilence === silent || (isSilence && quiet < patience)) return null;
    silent = isSilence;
    if (!silent) patience *= 2;
    return silent;
  };
}

/** Tells when the track falls silent, and when it is heard again; stops with the track or the signal. */
export function watchForSilence(track: MediaStreamTrack, onChange: (silent: boolean) => void, stop: AbortSignal): void {
  const sound = listenTo(track);
  if (!sound) return;
  const { context, analyser } = sound;
  const samples = new Float32Array(SAMPLES);
  const noticed = silenceNoticed();
  const timer = setInterval(() => {
    if (track.readyState === 'ended') return over();
    // Held back or muted, nothing is known of it.
    const isKnown = context.state === 'running' && !track.muted;
    if (isKnown) analyser.getFloatTimeDomainData(samples);
    const change = noticed(isKnown && samples.every((sample) => sample === 0));
    if (change !== null) onChange(change);
  }, LOOKED_EVERY);
  const over = (): void => {
    clearInterval(timer);
    context.close().catch(() => undefined);
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
