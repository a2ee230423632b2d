// Runs on the browser's audio thread: hands on what the microphone picks up, in pieces of about 20 ms, and sounds nothing.
declare const sampleRate: number;
declare abstract class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

class Sampler extends AudioWorkletProcessor {
  private piece = new Float32Array(Math.round(sampleRate / 50));
  private filled = 0;

  process([input]: readonly (readonly Float32Array[])[]): boolean {
    for (const sample of input?.[0] ?? []) {
      this.piece[this.filled++] = sample;
      if (this.filled < this.piece.length) continue;
      const { buffer } = this.piece;
      this.port.postMessage(this.piece, [buffer]);
      this.piece = new Float32Array(Math.round(sampleRate / 50));
      this.filled = 0;
    }
    return true;
  }
}

registerProcessor('sampler', Sampler);
