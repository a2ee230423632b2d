// Ordinary observers: what our methods cost and give beside the taught walk, bisection and the entropy criterion.
import { least, most, shown, type Family, type Figure } from '../figure.ts';
import { ALL_METHODS, ORDINARY, OURS, type MethodName } from './jobs.ts';
import { runJobs } from './pool.ts';
import type { Summary } from './result.ts';

const RUNS = 1000;
const WALK = 'taught walk, one hold a value';

export const sweeps: Family = {
  name: 'sweeps',
  async run({ tell }) {
    const jobs = ORDINARY.flatMap(({ name }) => ALL_METHODS.map((method) => ({ method, family: name })));
    const summaryOf = await runJobs(jobs, RUNS, tell);
    return ORDINARY.flatMap(({ name }) => {
      const of = (method: MethodName): Summary => summaryOf({ method, family: name });
      const tail = name === 'softness 0.3' ? 0.35 : 0.4;
      const narrow = name === 'softness 0.3' ? besideTwoHolds(of) : [];
      return [...figuresOf(of), ...besideTheWalk(of, tail), ...narrow, ...besideEntropy(of), ...OURS.map((method) => honesty(method, of(method)))].map(
        (figure) => ({ ...figure, name: `${name}: ${figure.name}` }),
      );
    });
  },
};

function figuresOf(of: (method: MethodName) => Summary): Figure[] {
  return ALL_METHODS.flatMap((method) => {
    const { holds, seconds, medianError, tailError, within, stated } = of(method);
    return [
      shown(`${method}: holds`, holds),
      shown(`${method}: seconds`, seconds),
      shown(`${method}: median error, steps`, medianError),
      shown(`${method}: 95th-percentile error, steps`, tailError),
      shown(`${method}: within one step`, within),
      shown(`${method}: stated`, stated),
    ];
  });
}

function besideTheWalk(of: (method: MethodName) => Summary, tail: number): Figure[] {
  const walk = of(WALK);
  const quick = of('graded, quick');
  const standard = of('graded, standard');
  const both = of('graded with arrows, quick');
  return [
    most('quick beside the walk: holds', quick.holds / walk.holds, 0.75),
    most('quick beside the walk: seconds', quick.seconds / walk.seconds, 0.88),
    most('quick beside the walk: 95th-percentile error', quick.tailError / walk.tailError, tail),
    most('standard beside the walk: holds', standard.holds / walk.holds, 0.85),
    most('standard beside the walk: seconds', standard.seconds / walk.seconds, 1),
    most('standard beside two holds a value: seconds', standard.seconds / of('taught walk, two holds a value').seconds, 0.62),
    most('standard beside the walk: 95th-percentile error', standard.tailError / walk.tailError, tail),
    most('graded with arrows beside graded alone: seconds', both.seconds / quick.seconds, 1),
    most('graded with arrows beside arrows alone: seconds', both.seconds / of('arrows, quick').seconds, 1),
  ];
}

const besideTwoHolds = (of: (method: MethodName) => Summary): Figure[] => [
  most('standard beside two holds a value: holds', of('graded, standard').holds / of('taught walk, two holds a value').holds, 0.53),
];

const besideEntropy = (of: (method: MethodName) => Summary): Figure[] => [
  most('quick beside the entropy criterion: seconds', of('graded, quick').seconds / of('graded, quick, by entropy').seconds, 1),
  most('standard beside the entropy criterion: seconds', of('graded, standard').seconds / of('graded, standard, by entropy').seconds, 0.92),
];

/** What is stated may be too modest, but hardly too proud. */
const honesty = (method: MethodName, { stated, within }: Summary): Figure => least(`${method}: observed share less stated`, within - stated, -0.02);
