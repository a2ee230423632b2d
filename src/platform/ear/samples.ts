// The microphone's sound as plain samples, for recognising on this computer. Nothing is recorded: each piece is handed on
// once and forgotten.

export interface Sampling {
  /** Samples a second. */
  readonly rate: number;
  /** The browser holds sound back until the person has touched the page. */
  readonly held: () => boolean;
  readonly stop: () => void;
}

export async function sample(track: MediaStreamTrack, onSamples: (samples: Float32Array) => void): Promise<Sampling> {
  const context = new AudioContext({ latencyHint: 'balanced' });
  try {
    await context.audioWorklet.addModule(new URL('sampler.js', location.href).href);
    const source = new MediaStreamAudioSourceNode(context, { mediaStream: new MediaStream([track]) });
    const sampler = new AudioWorkletNode(context, 'sampler', { numberOfInputs: 1, numberOfOutputs: 1, outputChannelCount: [1] });
    sampler.port.addEventListener('message', ({ data }: MessageEvent<Float32Array>) => onSamples(data));
    sampler.port.start();
    // A node that leads nowhere may never be asked for sound; what it gives out is silence.
    source.connect(sampler).connect(context.destination);
  } catch (error) {
    void context.close();
    throw error;
  }
  const touched = new AbortController();
  const resume = (): void => void context.resume();
  resume();
  for (const touch of ['pointerdown', 'keydown']) addEventListener(touch, resume, { capture: true, signal: touched.signal });
  return {
    rate: context.sampleRate,
    held: () => context.state === 'suspended',
    stop() {
      touched.abort();
      void context.close();
    },
  };
}
