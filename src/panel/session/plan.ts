// From what a sweep is to be about to the plan it opens with.
import type { Kit } from '../../kit/kit.ts';
import { failed, got, type Got } from '../../result.ts';
import type { Settings } from '../../settings.ts';
import { NO_MEMORY } from '../../sweep/belief/prior.ts';
import type { Plan } from '../../sweep/plan.ts';
import { isOnScale, nearestOn, USUAL_SCALE } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import type { Beginning } from './session.ts';

export function planFor(beginning: Beginning, kit: Kit, { manner }: Settings, newSeed: () => number): Got<Plan> {
  if (beginning.with === 'practice') {
    return got({
      subject: { situation: 'practice', body: 'Practice camera', lens: 'Practice lens', focalLength: millimetres(50), distance: millimetres(2500) },
      scale: USUAL_SCALE,
      arrows: beginning.arrows,
      manner,
      memory: NO_MEMORY,
      start: nearestOn(USUAL_SCALE, 0),
      practice: { seed: beginning.seed ?? newSeed() },
    });
  }
  const situation = kit.situations.find(({ id }) => id === beginning.situation);
  const body = kit.bodies.find(({ id }) => id === situation?.body);
  const lens = kit.lenses.find(({ id }) => id === situation?.lens);
  if (!situation || !body || !lens) return failed('That body, lens or distance is no longer in the kit. Choose another.');
  const start = beginning.start ?? nearestOn(body.scale, 0);
  if (!isOnScale(body.scale, start)) return failed('The value the body is set to now is not on its scale. Enter it again.');
  return got({
    subject: {
      situation: situation.id,
      body: body.name,
      lens: lens.name,
      focalLength: situation.focalLength,
      distance: situation.distance,
    },
    scale: body.scale,
    arrows: body.arrows,
    manner,
    memory: NO_MEMORY,
    start,
    practice: null,
    ...(beginning.bench && { bench: beginning.bench }),
  });
}
