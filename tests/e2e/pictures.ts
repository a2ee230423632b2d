// Pictures for people to look at: takes the tours of every screen and keeps what they pass in dist/screenshots, in every language at 240 and
// 360 px, in the longer one straight and mirrored, in every theme, and folded as it opens. The tests themselves keep none: most of their time would go there.
import { spawnSync } from 'node:child_process';

const TOURS = ['accessibility', 'heights', 'languages', 'languagesInRooms'].map((name) => `tests/e2e/${name}.test.ts`);

const { status } = spawnSync('node_modules/.bin/vitest', ['run', '-c', 'vitest.e2e.config.ts', ...TOURS], {
  stdio: 'inherit',
  env: { ...process.env, KEEP_PICTURES: 'yes' },
});
process.exitCode = status ?? 1;
