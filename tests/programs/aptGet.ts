// apt-get, waiting for whoever else uses it. It waits by itself for only one of its locks, not for those of its lists and
// of what it has fetched, so a run that was turned away is repeated.
import { spawn } from 'node:child_process';

const WAIT = 5_000;
const TRIES = 240;
const TAKEN = /Could not get lock|Unable to lock|is another process using it/;
const PATIENT = ['-qq', '-o', 'DPkg::Lock::Timeout=1200', '-o', 'Acquire::Retries=3'];

/** Whether it succeeded. What it says goes to the terminal. `wait` is in milliseconds. */
export async function aptGet(args: readonly string[], wait = WAIT): Promise<boolean> {
  for (let attempt = 1; attempt <= TRIES; attempt++) {
    const { code, said } = await run([...PATIENT, ...args]);
    if (code === 0) return true;
    if (!TAKEN.test(said)) return false;
    if (attempt === 1) console.log('Another program is installing something. Waiting for it …');
    await new Promise((go) => setTimeout(go, wait));
  }
  return false;
}

function run(args: readonly string[]): Promise<{ code: number | null; said: string }> {
  return new Promise((done) => {
    // In English, so that a lock is recognised.
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive', LC_ALL: 'C' };
    const apt = spawn('apt-get', args, { env, stdio: ['ignore', 'inherit', 'pipe'] });
    let said = '';
    apt.stderr.on('data', (part: Buffer) => {
      said += part.toString();
      process.stderr.write(part);
    });
    apt.on('error', () => done({ code: null, said }));
    apt.on('close', (code) => done({ code, said }));
  });
}
