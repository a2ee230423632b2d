// Lenses and people that are not as the belief expects: no method of ours may be sure and wrong, and a band past the
// limit must be known for one in good time.
import { least, most, shown, type Family } from '../figure.ts';
import { FAMILIES, ORDINARY, type MethodName } from './jobs.ts';
import { runJobs } from './pool.ts';

const RUNS = 1000;
const METHODS: readonly MethodName[] = ['graded, quick', 'graded, standard', 'graded with arrows, quick', 'graded with arrows, standard'];

export const awkwardSweeps: Family = {
  name: 'awkward',
  async run({ tell }) {
    const families = FAMILIES.filter((family) => !ORDINARY.includes(family));
    const jobs = families.flatMap(({ name, arrowsOnly }) =>
      METHODS.filter((method) => !arrowsOnly || method.includes('arrows')).map((method) => ({ method, family: name })),
    );
    const summaryOf = await runJobs(jobs, RUNS, tell);
    return jobs.flatMap((job) => {
      const summary = summaryOf(job);
      const name = `${job.family}: ${job.method}`;
      const limit =
        job.family === 'past the limit'
          ? [most(`${name}: holds`, summary.holds, 14), least(`${name}: ended as past the limit`, summary.pastTheLimit, 0.9)]
          : [shown(`${name}: holds`, summary.holds)];
      return [
        ...limit,
        shown(`${name}: seconds`, summary.seconds),
        shown(`${name}: 95th-percentile error, steps`, summary.tailError),
        shown(`${name}: within one step`, summary.within),
        shown(`${name}: stated`, summary.stated),
        most(`${name}: sure and wrong by more than two steps`, summary.confidentlyWrong, 0.02),
      ];
    });
  },
};
