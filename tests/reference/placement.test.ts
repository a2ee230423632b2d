// The grid engine that suggests corrections, held against published placement of trials.
// Source: A. B. Watson, QUEST+, J. Vision 17(3):10 (2017), example 1: threshold of a Weibull function by expected
// entropy, uniform prior; the sequence, masses and entropy as a MATLAB-checked public re-implementation prints them.
import { expect, test } from 'vitest';
import { entropy, lookAhead } from '../../src/sweep/belief/criteria.ts';
import { observe, predict, startFrom, type Experiment, type Posterior } from '../../src/sweep/belief/grid.ts';

const LEVELS = Array.from({ length: 41 }, (_, index) => index - 40);
const SLOPE = 3.5;
const GUESS = 0.5;
const LAPSE = 0.02;
const WRONG = 0;
const CORRECT = 1;

const weibull: Experiment = {
  hypotheses: LEVELS.length,
  stimuli: LEVELS.length,
  outcomes: 2,
  likelihoods(stimulus, which, into) {
    which.forEach((threshold, k) => {
      const correct = 1 - LAPSE - (1 - GUESS - LAPSE) * Math.exp(-(10 ** ((SLOPE * (LEVELS[stimulus]! - LEVELS[threshold]!)) / 20)));
      into[WRONG * which.length + k] = 1 - correct;
      into[CORRECT * which.length + k] = correct;
    });
  },
};

const RESPONSES = [1, 1, 1, 1, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 0, 1, 1, 0, 1, 1, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1];
const PLACED = [
  -18, -22, -25, -28, -30, -22, -13, -15, -16, -18, -19, -20, -21, -22, -23, -19, -20, -20, -18, -18, -19, -17, -17, -18, -18, -18, -19, -19, -19, -19, -19,
  -19,
];

const uniform = startFrom(new Float64Array(LEVELS.length).fill(1));
const stimulusAt = (level: number): number => LEVELS.indexOf(level);

function nextStimulus(posterior: Posterior): number {
  return lookAhead(weibull, posterior, entropy).reduce((best, next) => (next.expected < best.expected ? next : best)).stimulus;
}

function afterAllTrials(): Posterior {
  return RESPONSES.reduce((posterior, response, trial) => {
    return observe(weibull, posterior, stimulusAt(PLACED[trial]!), [response]).posterior;
  }, uniform);
}

test('the engine places all 32 trials of the published example where it places them', () => {
  let posterior = uniform;
  const placed = RESPONSES.map((response) => {
    const stimulus = nextStimulus(posterior);
    posterior = observe(weibull, posterior, stimulus, [response]).posterior;
    return LEVELS[stimulus];
  });
  expect(placed).toEqual(PLACED);
});

test('after the published trials the mass at -30 dB is the published one', () => {
  const { which, mass } = afterAllTrials();
  expect(mass[which.indexOf(stimulusAt(-30))]).toBeCloseTo(0.00033479, 8);
});

test('after the published trials the mode is -20 dB', () => {
  const { which, mass } = afterAllTrials();
  expect(LEVELS[which[mass.indexOf(Math.max(...mass))]!]).toBe(-20);
});

test('after the published trials the expected entropy at -32 dB is the published one, in bits', () => {
  const prospect = lookAhead(weibull, afterAllTrials(), entropy)[stimulusAt(-32)];
  expect(prospect?.expected).toBeCloseTo(2.4284, 4);
});

test('a threshold one decibel above the stimulus gives the published chances', () => {
  const sure = (threshold: number): Posterior => ({ which: Int32Array.of(stimulusAt(threshold)), mass: Float64Array.of(1) });
  expect(predict(weibull, sure(-34), stimulusAt(-35))[WRONG]).toBeCloseTo(0.266, 4);
  expect(predict(weibull, sure(-24), stimulusAt(-25))[CORRECT]).toBeCloseTo(0.734, 4);
});
