// A computer's sound without a sound card: a server of our own with a microphone that hears whatever is played into the room,
// and a loudspeaker that nobody hears. Browsers take it for real devices, and their sound runs in real time.
import { execFile, execFileSync, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { program } from '../programs/programs.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

export interface SoundServer {
  /** The environment that leads a browser to its microphone and loudspeaker. */
  readonly env: Readonly<Record<string, string>>;
  /** Plays a WAV file into the room, over what sounds there already; ends when it has sounded. */
  play(wav: string): Promise<void>;
  close(): void;
}

const run = promisify(execFile);

export async function startSoundServer(): Promise<SoundServer> {
  const folder = temporaryFolder();
  const socket = join(folder, 'socket');
  const modules = [
    `module-native-protocol-unix socket=${socket} auth-anonymous=1`,
    'module-null-sink sink_name=room rate=44100 channels=1',
    'module-null-sink sink_name=loudspeaker',
    // Browsers do not offer a monitor as a microphone.
    'module-remap-source master=room.monitor source_name=microphone',
  ];
  const server = spawn(
    program('pulseaudio'),
    ['-n', '--daemonize=no', '--exit-idle-time=-1', '--use-pid-file=no', '--realtime=no', ...modules.flatMap((one) => ['-L', one])],
    { stdio: 'ignore', env: { ...process.env, XDG_RUNTIME_DIR: folder, HOME: folder } },
  );
  const env = { PULSE_SERVER: `unix:${socket}`, PULSE_SOURCE: 'microphone', PULSE_SINK: 'loudspeaker' };
  const deadline = performance.now() + 10_000;
  while (!existsSync(socket)) {
    if (server.exitCode !== null || performance.now() > deadline) throw new Error('The sound server does not start.');
    await new Promise((go) => setTimeout(go, 50));
  }
  const player = program('paplay');
  execFileSync(player, ['--version']);
  const playing = new AbortController();
  return {
    env,
    async play(wav) {
      try {
        await run(player, ['--latency-msec=50', '-d', 'room', wav], { env: { ...process.env, ...env }, signal: playing.signal });
      } catch (fault) {
        if (!playing.signal.aborted) throw fault;
      }
    },
    close() {
      playing.abort();
      server.kill();
      removeFolder(folder);
    },
  };
}
