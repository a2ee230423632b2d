// The runner as the trial sees it: started when it is wanted, asked, and ended with all that it started where it takes too long.
import { fork, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import type { Answer, Order } from './runner.ts';

export interface Running {
  /** `null` where for so long no test ended. */
  ask(order: Order, milliseconds: number): Promise<Answer | null>;
  end(): void;
}

export function running(root: string): Running {
  let child: ChildProcess | null = null;

  const end = (): void => {
    // Its own group: the worker that hangs is a child of it.
    if (child?.pid !== undefined && child.exitCode === null) process.kill(-child.pid, 'SIGKILL');
    child = null;
  };

  const started = async (): Promise<ChildProcess> => {
    if (child !== null && child.exitCode === null && child.connected) return child;
    child = fork(join(root, 'manifest/run.mjs'), ['tests/spoil/runner.ts'], { cwd: root, detached: true, stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
    await answerOf(child, 120_000);
    return child;
  };

  return {
    async ask(order, milliseconds) {
      const runner = await started();
      runner.send(order);
      const answer = await answerOf(runner, milliseconds);
      if (answer === null) end();
      return answer as Answer | null;
    },
    end,
  };
}

function answerOf(runner: ChildProcess, milliseconds: number): Promise<unknown> {
  return new Promise((resolve) => {
    const over = (answer: unknown): void => {
      clearTimeout(timer);
      if (answer === 'goes on') {
        timer = setTimeout(ended, milliseconds);
        return;
      }
      runner.off('message', over);
      runner.off('exit', ended);
      resolve(answer);
    };
    const ended = (): void => over(null);
    let timer = setTimeout(ended, milliseconds);
    runner.on('message', over);
    runner.once('exit', ended);
  });
}
