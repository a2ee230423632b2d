// The browser's own recogniser, fed by a fake microphone and answered on loopback.
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { startSpeechService } from './speech-service.ts';
import { microphonePlaying, writeSpeech } from './spoken.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

test('a spoken word reaches the service and its answer comes back as an interim and a final result', async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const wav = join(folder, 'word.wav');
  writeSpeech(wav, [{ after: 0.5, say: 'solid' }]);
  const service = await startSpeechService(async ({ heard, send, close }) => {
    await heard;
    send({ results: [{ final: false, alternatives: [{ transcript: 'sol', confidence: 0.5 }] }] });
    send({ results: [{ final: true, alternatives: [{ transcript: 'solid', confidence: 0.9 }] }] });
    await close();
  });
  onTestFinished(service.close);
  const chromium = await launchChromium({ args: [...microphonePlaying(wav), ...service.args] });
  onTestFinished(chromium.close);
  const panel = await chromium.openPanel();

  const heard = await panel.evaluate(async () => {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    const recognition = new webkitSpeechRecognition() as SpeechRecognition & { start: (track?: MediaStreamTrack) => void };
    recognition.interimResults = true;
    const results: { transcript: string | undefined; final: boolean }[] = [];
    recognition.addEventListener('result', (event) => {
      for (const result of event.results) results.push({ transcript: result[0]?.transcript, final: result.isFinal });
    });
    const ended = new Promise<string>((done) => {
      recognition.addEventListener('error', (event) => done(event.error));
      recognition.addEventListener('end', () => done('end'));
    });
    recognition.start(stream.getAudioTracks()[0]);
    return { how: await ended, results };
  });
  expect(heard).toEqual({
    how: 'end',
    results: [
      { transcript: 'sol', final: false },
      { transcript: 'solid', final: true },
    ],
  });
});
