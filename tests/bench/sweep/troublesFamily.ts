// What is wrong beside the correction: named where it is there, and hardly ever where it is not.
import { least, most, shown, type Family } from '../figure.ts';
import { sideBySide } from './pool.ts';
import type { TroublesSummary, Wrong } from './troublesJob.ts';

const HEALTHY = 250;
const WRONG = 150;

/** What each camera has, whether its body shows arrows, the name it is to be given, and in how many sweeps at least. */
const CASES: readonly { readonly wrong: Wrong; readonly light: 'arrows' | 'no arrows'; readonly name: string; readonly least: number | null }[] = [
  { wrong: 'flickers everywhere', light: 'no arrows', name: 'flickers everywhere', least: 0.95 },
  { wrong: 'flickers everywhere', light: 'arrows', name: 'flickers everywhere', least: 0.9 },
  { wrong: 'never lights', light: 'no arrows', name: 'never lights', least: 0.95 },
  { wrong: 'lights everywhere', light: 'no arrows', name: 'lights everywhere', least: 0.85 },
  { wrong: 'arrows turn round', light: 'arrows', name: 'arrows contradict the lights', least: 0.8 },
  { wrong: 'focus moves', light: 'no arrows', name: 'focus moved', least: 0.7 },
  { wrong: 'hole in the band, stepped through', light: 'no arrows', name: 'hole in the band', least: 0.85 },
  // A search that never crosses the gap cannot know of it: it takes the near side for an end of the band. The value to
  // enter is held before the finish, which meets some.
  { wrong: 'hole in the band', light: 'no arrows', name: 'hole in the band', least: 0.35 },
  { wrong: 'moved between two sweeps', light: 'no arrows', name: 'sweeps differ', least: 0.85 },
];

export const troubles: Family = {
  name: 'troubles',
  async run({ tell }) {
    const odd = CASES.map(({ wrong, light }) => [wrong, light, 'softness 0.3', '0', String(WRONG)]);
    const healthy = ['softness 0.3', 'softness 0.8'].flatMap((family) =>
      ['no arrows', 'arrows'].map((light, at) => ['nothing', light, family, String(at * HEALTHY), String(HEALTHY)]),
    );
    const calls = [...odd, ...healthy];
    const summaries = await sideBySide<TroublesSummary>('tests/bench/sweep/troublesJob.ts', calls, (_, call, done) =>
      tell(`${done}/${calls.length} ${call.slice(0, 3).join(', ')}`),
    );
    const named = CASES.flatMap(({ wrong, light, name, least: bound }, index) => {
      const summary = summaries[index];
      const share = (summary?.named[name] ?? 0) / WRONG;
      const title = `${wrong}, ${light}: named`;
      return [bound === null ? shown(title, share) : least(title, share, bound), shown(`${wrong}, ${light}: holds`, summary?.holds ?? Number.NaN)];
    });
    const well = summaries.slice(CASES.length);
    const all = well.reduce((sum, { runs }) => sum + runs, 0);
    const shareOf = (count: (summary: TroublesSummary) => number): number => well.reduce((sum, summary) => sum + count(summary), 0) / all;
    const names = [...new Set(CASES.map(({ name }) => name)), 'verdicts misjudged', 'band drifts', 'play'];
    return [
      ...named,
      shown('healthy: sweeps', all),
      most(
        'healthy: any trouble named, but a moved focus',
        shareOf(({ any }) => any),
        0.02,
      ),
      // The question about the focus has its own bound, as in the family of moved ones.
      ...names.map((name) =>
        most(
          `healthy: ${name}`,
          shareOf((summary) => summary.named[name] ?? 0),
          name === 'focus moved' || name === 'sweeps differ' ? 0.02 : 0.005,
        ),
      ),
    ];
  },
};
