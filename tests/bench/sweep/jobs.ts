// Every method of the bench by its name, and one job: a method run over a family of observers.
import type { PracticeCamera } from '../../../src/practice/camera.ts';
import type { Random } from '../../../src/practice/random.ts';
import { plainBisection, taughtWalk } from './handMethods.ts';
import { awkward, observer, ordinary, type ObserverFamily } from './observers.ts';
import { ourMethod, type OurMethod } from './ourMethods.ts';
import { summarise, type Summary, type SweepResult } from './result.ts';

type Method = (camera: PracticeCamera, random: Random) => SweepResult;

const byHand = {
  'taught walk, one hold a value': (camera: PracticeCamera, random: Random) => taughtWalk(camera, random, 1),
  'taught walk, two holds a value': (camera: PracticeCamera, random: Random) => taughtWalk(camera, random, 2),
  'plain bisection': plainBisection,
} satisfies Record<string, Method>;

const criterion = 'ours' as const;
const ours = {
  'in or out, quick': { care: 'quick', arrows: false, grades: false, criterion },
  'arrows, quick': { care: 'quick', arrows: true, grades: false, criterion },
  'graded, quick': { care: 'quick', arrows: false, grades: true, criterion },
  'graded, standard': { care: 'standard', arrows: false, grades: true, criterion },
  'graded, thorough': { care: 'thorough', arrows: false, grades: true, criterion },
  'graded with arrows, quick': { care: 'quick', arrows: true, grades: true, criterion },
  'graded with arrows, standard': { care: 'standard', arrows: true, grades: true, criterion },
  'graded, quick, by variance': { care: 'quick', arrows: false, grades: true, criterion: 'variance' },
  'graded, quick, by entropy': { care: 'quick', arrows: false, grades: true, criterion: 'entropy' },
  'graded, standard, by entropy': { care: 'standard', arrows: false, grades: true, criterion: 'entropy' },
} satisfies Record<string, OurMethod>;

export type MethodName = keyof typeof byHand | keyof typeof ours;
export const OURS = Object.keys(ours) as (keyof typeof ours)[];
export const ALL_METHODS = [...(Object.keys(byHand) as (keyof typeof byHand)[]), ...OURS];
export const ORDINARY = [ordinary(0.3), ordinary(0.8)];
export const FAMILIES: readonly ObserverFamily[] = [...ORDINARY, ...awkward];

/** Runs one method over the first `runs` observers of a family. */
export function runJob(method: MethodName, familyName: string, runs: number): Summary {
  const family = FAMILIES.find(({ name }) => name === familyName);
  if (!family) throw new Error(`No family of observers is called ${familyName}.`);
  const hand = method in byHand;
  const arrows = !hand && ours[method as keyof typeof ours].arrows;
  const run: Method = hand ? byHand[method as keyof typeof byHand] : ourMethod(ours[method as keyof typeof ours]);
  const results = Array.from({ length: runs }, (_, index) => {
    const { camera, random } = observer(family, index, arrows);
    return run(camera, random);
  });
  return summarise(results);
}
