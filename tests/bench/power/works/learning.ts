// Words that are taught and learned, through the port that the hearing check and a sweep use, one change after another.
import { buildSync } from 'esbuild';
import type { Takes } from '../../../../src/platform/takes.ts';
import type { Take } from '../../../../src/voice/ownWords/take.ts';
import type { Seat } from '../../../e2e/seat.ts';
import type { Fact } from '../ledger.ts';
import type { Life, Work } from '../work.ts';
import { takeOf } from './importing.ts';
import { settled } from './ways.ts';

/** A language holds a thousand takes at most. */
const MANY = 400;

export const learning: Work = {
  name: 'learning',
  desk: 'logbook',
  lasts: 1500,
  presses: 12,
  acknowledges: 12,
  async go(life, seat) {
    await settled(seat);
    await seat.evaluate(portInPage());
    if (life.before.taught.length > MANY) {
      life.ledger.drop((what) => what.startsWith('word '));
      await change(life, seat, [], 'in place of all');
    }
    for (let turn = 0; ; turn += 1) {
      const word = `t${life.number}-${turn}`;
      await change(life, seat, [takeOf(word), takeOf(word)], 'beside');
      life.acknowledged(taught(word, 2));
      await change(life, seat, [{ ...takeOf(word), learned: true }], 'beside');
      life.acknowledged(taught(word, 3));
    }
  },
};

type WithPort = Window & { takesOfPower?: Takes };

async function change(life: Life, seat: Seat, takes: readonly Take[], how: 'beside' | 'in place of all'): Promise<void> {
  life.pressed();
  const ok = await seat.evaluate(
    async (added, manner) => {
      const kept = await (window as WithPort).takesOfPower?.change((now) => [...(manner === 'beside' ? (now ?? []) : []), ...added]);
      return kept?.ok ?? false;
    },
    takes,
    how,
  );
  if (!ok) throw new Error('The words were not kept.');
}

const taught = (word: string, takes: number): Fact => ({
  what: `word ${word}`,
  of: 'beside',
  isIn: (kept) => kept.taught.filter((one) => one === word).length >= takes,
});

/** The project's own port, as a function that puts it into a page. */
function portInPage(): () => void {
  const { outputFiles } = buildSync({
    stdin: { contents: `import { takesIn } from './src/platform/takes.ts'; window.takesOfPower = takesIn(() => 'en-US');`, resolveDir: '.', loader: 'ts' },
    bundle: true,
    write: false,
    // Nothing in it is exported, so that it may stand, with what it awaits, in a function.
    format: 'esm',
    target: 'es2022',
  });
  const code = `async () => { ${outputFiles[0]?.text ?? ''} }`;
  return Object.assign(() => undefined, { toString: () => code });
}
