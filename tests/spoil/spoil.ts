// Spoils the pure rooms place by place and asks whether a unit test notices: `npm run spoil -- --seed 7 --count 100`. The places
// are drawn by the seed; what does not compile is not counted. What was tried lies in dist/spoil and is not tried again, but for
// what survived or took too long with `--again`. `--in src/kit` draws of a part alone.
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { compiler } from './compiles.ts';
import { copiedTree } from './copiedTree.ts';
import { drawn } from './draw.ts';
import { placesIn, type Place } from './places.ts';
import { pureSources } from './pureSources.ts';
import { importers, relatedTo } from './related.ts';
import { running } from './running.ts';
import { SAME } from './same/all.ts';
import { listed, table, told, type Judged } from './table.ts';
import { keepDurations, knownDurations, tallyOf, type Trial } from './tally.ts';
import { tried } from './trial.ts';

const UNKNOWN_MS = 1_500;

const { values } = parseArgs({ options: { seed: { type: 'string' }, count: { type: 'string' }, again: { type: 'boolean' }, in: { type: 'string' } } });
const seed = Number(values.seed ?? Math.floor(Math.random() * 1_000_000));
const count = Number(values.count ?? 100);

const sources = pureSources();
const places = sources.files.filter((file) => file.startsWith(values.in ?? '')).flatMap((file) => placesIn(file, readFileSync(file, 'utf8')));
console.log(`seed ${seed}: ${count} of ${places.length} places`);

const tally = tallyOf(seed);
const took = knownDurations();
const importedBy = importers();
const compiles = compiler(sources);
const tree = copiedTree();
const runner = running(tree.root);
const ended = (): void => {
  runner.end();
  tree.remove();
};
for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.on(signal, () => {
    ended();
    process.exit(1);
  });

function judged(trial: Trial): Judged {
  const line = readFileSync(trial.place.file, 'utf8').split('\n')[trial.place.line - 1] ?? '';
  const same = SAME.find((each) => each.file === trial.place.file && line.includes(each.line) && each.after === trial.place.after);
  const isSame = same !== undefined && (trial.verdict.outcome === 'survived' || trial.verdict.outcome === 'time');
  return { ...trial, outcome: isSame ? 'the same' : trial.verdict.outcome, why: same?.why ?? '' };
}

async function trialOf(place: Place): Promise<Trial> {
  const before = tally.of(place);
  if (before !== undefined && !(values.again && ['survived', 'time'].includes(before.verdict.outcome))) return before;
  const related = relatedTo(place.file, importedBy, (test) => took.get(test) ?? UNKNOWN_MS);
  const trial = { place, verdict: await tried(place, related, { root: tree.root, runner, took }) };
  tally.add(trial);
  keepDurations(took);
  return trial;
}

const trials: Judged[] = [];
try {
  for (const place of drawn(seed, places)) {
    if (trials.length === count) break;
    if (tally.of(place) === undefined && !compiles(place)) continue;
    const trial = judged(await trialOf(place));
    trials.push(trial);
    console.log(`${trials.length} ${trial.outcome} ${(trial.verdict.milliseconds / 1000).toFixed(1)} s: ${told(place)}`);
  }
} finally {
  ended();
}
console.log(`\n${table(trials)}\n\n${listed(trials)}`);
