// Mozilla's linter on the Firefox build. Anything it says fails, but for what is listed here with its reason.
import { spawnSync } from 'node:child_process';

type Message = { _type: string; code: string; message: string; file?: string; line?: number };
type Report = { errors: Message[]; warnings: Message[]; notices: Message[] };

/** preact sets innerHTML where a component asks for dangerouslySetInnerHTML; none of ours does. */
const accepted = [/^parts\/chunk-\w+\.js$/, /^hearing\.js$/, /^card\.js$/, /^entering\.js$/, /^workshop\.js$/].map((file) => ({ code: 'UNSAFE_VAR_ASSIGNMENT', file }));

const run = spawnSync('node_modules/.bin/web-ext', ['lint', '--source-dir', 'dist/firefox', '--output', 'json'], {
  encoding: 'utf8',
});
const report = JSON.parse(run.stdout) as Report;
const open = [...accepted];
const faults = [...report.errors, ...report.warnings, ...report.notices].filter((said) => {
  const at = open.findIndex(({ code, file }) => code === said.code && file.test(said.file ?? ''));
  if (at >= 0) open.splice(at, 1);
  return at < 0;
});
for (const { _type: kind, code, message, file = '', line = 0 } of faults) {
  console.error(`${kind} ${code} ${file}:${line} ${message}`);
}
console.log(faults.length === 0 ? 'add-on lint: clean' : `add-on lint: ${faults.length} to mend`);
process.exitCode = faults.length === 0 ? 0 : 1;
