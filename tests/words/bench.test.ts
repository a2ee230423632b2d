// Contract of the English of the bench: what is spoken in the walk is one short sentence, what is shown is a few, no value is
// lost on the way, and what could hurt is said in full.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIGHTINGS } from '../../src/optics/lamps.ts';
import { lampCautions, SQUARING, type Caution } from '../../src/optics/setUp/caution.ts';
import { degrees } from '../../src/optics/quantity.ts';
import type { FrontShare } from '../../src/optics/placement.ts';
import type { PrintFactor } from '../../src/optics/print/printCheck.ts';
import { setUpWalk } from '../../src/optics/setUp/walk.ts';
import { millimetres as mm, steps } from '../../src/units.ts';
import { words as bench } from '../../src/words/en/bench.ts';
import { words as cautions } from '../../src/words/en/cautions.ts';
import { words as placed } from '../../src/words/en/placed.ts';
import { words as print } from '../../src/words/en/print.ts';
import { words as setUp } from '../../src/words/en/setUp.ts';
import { anyCase, plain } from '../optics/setUpCases.ts';
import type { SetUpCase } from '../../src/optics/setUp/step.ts';

const ONE_SENTENCE = /^[A-Z][^.?;:]*(\.\d[^.?;:]*)*[.?]$/;
const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?]) (?=[A-Z])/);

describe('each step of the walk', () => {
  it('is one short sentence to speak and at most three to read, with every value in its place', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        for (const { said } of setUpWalk(given)) {
          const [speak, show] = [setUp.speak(said), setUp.show(said)];
          expect(speak.length).toBeLessThanOrEqual(70);
          expect(speak).toMatch(ONE_SENTENCE);
          expect(`${speak} ${show}`).not.toMatch(/undefined|NaN|\[object/);
          expect(sentencesOf(show).length).toBeLessThanOrEqual(3);
          for (const sentence of sentencesOf(show)) {
            expect(sentence).toMatch(ONE_SENTENCE);
            expect(sentence.length).toBeLessThanOrEqual(125);
          }
        }
      }),
    );
  });

  it('says what this body, this lens and this rig need', () => {
    const show = (given: Partial<SetUpCase>, id: string) => setUp.show(setUpWalk({ ...plain, ...given }).find(({ said }) => said.id === id)!.said);
    const speak = (given: Partial<SetUpCase>, id: string) => setUp.speak(setUpWalk({ ...plain, ...given }).find(({ said }) => said.id === id)!.said);
    expect(show({ body: { ...plain.body, manualAtBody: false } }, 'hold focus')).toContain('tape');
    expect(show({ body: { ...plain.body, liveView: false } }, 'critical focus')).toMatch(/^Photograph/);
    expect(speak({ start: steps(-7) }, 'start value')).toContain('minus 7');
    expect(show({ start: steps(-7) }, 'start value')).toContain('\u22127');
    expect(show({ measuredFrom: 'front of lens', unit: 'ft' }, 'distance')).toContain('13.9\u00a0ft from the front of the lens');
    expect(show({ converter: 1.4 }, 'converter')).toContain('1.4\u00d7 converter');
    expect(setUp.speak('done')).toBe('Set up. Ready for the first hold.');
  });
});

describe('the cautions', () => {
  const said = (all: readonly Caution[]) => all.map(cautions.caution).join('\n');

  it('name the harm and how to keep clear of it', () => {
    expect(said([{ may: 'hurt', is: 'manual' }])).toMatch(/manual.*warranty/);
    expect(said(SQUARING.mirror)).toMatch(/mirror throw the sun/);
    expect(said(SQUARING.spot)).toMatch(/class 1 or 2 \(IEC 60825-1\).*never.*viewfinder/s);
    expect(said([{ may: 'hurt', is: 'heavy lens' }])).toMatch(/own tripod foot/);
    expect(said(lampCautions('warm lamp', 60))).toMatch(/hot.*leads.*120 times a second.*1\/120\u00a0s.*Warm light/s);
  });

  it('are whole sentences', () => {
    for (const lighting of LIGHTINGS) for (const caution of lampCautions(lighting, 50)) expect(cautions.caution(caution)).toMatch(/^[A-Z].*\.$/);
  });
});

describe('what is found at the bench', () => {
  it.each([
    [
      { is: 'nearer than its closest focus', wanted: mm(500), closest: mm(800), unit: 'm' },
      '0.5\u00a0m is nearer than this lens can focus. Put the target at 0.8\u00a0m or farther, measured from the film-plane mark.',
    ],
    [
      { is: 'no focus so near', focalLength: mm(85), distance: mm(300), from: 'film plane' },
      'A plain 85\u00a0mm lens cannot focus at 0.3\u00a0m from the film plane. Measure the distance again, or measure the magnification on the scale of the target.',
    ],
    [
      { is: 'two lengths', text: '1,250', one: [{ value: 1.25, unit: 'ft' }], other: [{ value: 1250, unit: 'ft' }] },
      '\u201c1,250\u201d can mean two lengths. Write 1.25\u00a0ft or 1250\u00a0ft.',
    ],
    [{ is: 'two numbers', text: '1,000', one: 1, other: 1000 }, '\u201c1,000\u201d can mean two numbers. Write 1 or 1000.'],
    [{ is: 'focal length in metres', typed: 0.085, meant: mm(85) }, '0.085 looks like metres. Enter the focal length in millimetres, here 85.'],
    [{ is: 'tilt too large', most: 30 }, 'That would be a tilt of more than 30°. Measure the sides again, and check the size and distance of the target.'],
    [{ is: 'target too large' }, 'The target would be larger than a wall. Move it nearer, or set a smaller AF area.'],
  ] as const)('%o is told with what to do', (fault, sentence) => expect(bench.fault(fault)).toBe(sentence));

  it('35 mm times fifty is written as 1.75 m and 5.74 ft (common practice)', () => {
    expect(bench.distance.use(mm(1750), 'm')).toContain('1.75\u00a0m');
    expect(bench.distance.use(mm(1750), 'ft')).toContain('5.74\u00a0ft');
  });

  it('a tilt is told with what to do about it', () => {
    const tilt = { sideways: degrees(-3), leaning: degrees(-3), whole: degrees(4.2), uncertainty: degrees(0.1) };
    expect(bench.square.bySides(tilt, degrees(2), { verdict: 'turn', away: ['right', 'bottom'] })).toBe(
      'Tilted 4.2°, give or take 0.2°. Turn the target so that its right edge and its bottom edge go away from the camera.',
    );
    expect(bench.square.bySides(tilt, degrees(2), { verdict: 'turn', away: ['right'] })).toContain('its right edge goes away');
    expect(bench.square.bySides(tilt, degrees(0.3), { verdict: 'cannot tell', finer: { by: 'the mirror alone' } })).toMatch(
      /too rough to tell 0\.3°\. No rectangle in this picture.* use the mirror\.$/,
    );
    expect(bench.square.bySides(tilt, degrees(8), { verdict: 'cannot tell', finer: { by: 'marks', apart: mm(844) } })).toMatch(
      /marks on the board at least 844\u00a0mm apart both ways, or use the mirror\.$/,
    );
    expect(bench.square.allowed(degrees(2), mm(180), mm(6.28))).toBe(
      'The target must be square to within 2°. Across its 180\u00a0mm, one edge may stand 6.3\u00a0mm nearer than the other.',
    );
  });

  it('a print that came out smaller may be made anew or kept', () => {
    expect(bench.target.print({ factor: 0.96 as PrintFactor, trueSize: false })).toBe(
      'The print came out at 96%. Print it again at 100%, not fitted to the page. Or keep it, and the sizes are worked out with 96%.',
    );
  });

  it('a value shifted on purpose is told as one, and every estimate as an estimate', () => {
    expect(placed.placed({ shift: 38, chosen: steps(5), onSubject: steps(2), moved: steps(3), share: (2 / 3) as FrontShare })).toBe(
      '+5 instead of +2, shifted on purpose to put 67% of the depth of field in front of the subject. This is an estimate.',
    );
    for (const looks of ['narrow', 'plausible', 'wide'] as const) expect(placed.width({ share: 0.5, looks }, 'estimate')).toContain('an estimate');
    expect(placed.width({ share: 0.5, looks: 'wide' }, 'bracket')).toContain('by what a bracket measured a step to be worth.');
  });

  it('the page to print counts its sheets', () => {
    expect(print.page.drawn(1)).toMatch(/^The target is on one sheet and the ramp is on the last\. Print at 100%/);
    expect(print.page.drawn(4)).toMatch(/^The target is on 4 sheets, to be joined at their marks/);
  });
});
