// Mozilla's linter on the Firefox build. Anything it says fails, but for what is named here with its reason.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

type Message = { _type: string; code: string; message: string; file?: string; line?: number };
type Report = { errors: Message[]; warnings: Message[]; notices: Message[] };

/** preact sets innerHTML where a component asks for dangerouslySetInnerHTML; none of ours does. Each bundle has its own preact. */
const isPreact = ({ code, file = '' }: Message): boolean => {
  if (code !== 'UNSAFE_VAR_ASSIGNMENT') return false;
  const assigned = readFileSync(join('dist/firefox', file), 'utf8').match(/\.(innerHTML|outerHTML)\s*\+?=(?!=)[^;,)]*/g) ?? [];
  return assigned.length === 1 && /^\.innerHTML=\w+\.__html$/.test(assigned[0] ?? '');
};

const run = spawnSync('node_modules/.bin/web-ext', ['lint', '--source-dir', 'dist/firefox', '--output', 'json'], {
  encoding: 'utf8',
});
const report = JSON.parse(run.stdout) as Report;
const faults = [...report.errors, ...report.warnings, ...report.notices].filter((said) => !isPreact(said));
for (const { _type: kind, code, message, file = '', line = 0 } of faults) {
  console.error(`${kind} ${code} ${file}:${line} ${message}`);
}
console.log(faults.length === 0 ? 'add-on lint: clean' : `add-on lint: ${faults.length} to mend`);
process.exitCode = faults.length === 0 ? 0 : 1;
