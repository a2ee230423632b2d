// The pieces of kit that stand in for what nobody has told: a result is kept under them, and waits there to be named.
import { newBody, newLens } from '../../kit/kit.ts';
import { pieceOf } from '../../kit/told.ts';
import type { Plan, Unnamed } from '../../sweep/plan.ts';
import { millimetres, type Moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import type { KitDesk } from './telling.ts';

/** What stands in for a focal length: the usual one (common practice, no source). */
const USUAL_LENGTH = millimetres(50);

export interface StoodIn {
  readonly parts: Unnamed;
  /** Nobody has told the focal length either. */
  readonly lengthToo: boolean;
}

/** The parts with a stand-in for each that is missing; one body without a name serves all such sweeps. */
export function withStandIns(parts: Unnamed, { scale, arrows }: Pick<Plan, 'scale' | 'arrows'>, opened: Moment, desk: KitDesk): StoodIn {
  const { bodies } = desk.kit();
  const { standIn } = words('session');
  const body =
    parts.body ??
    keep(
      bodies.find((one) => one.standIn && one.retired === null)?.id ??
        desk.putKit('bodies', { ...newBody('', standIn.body, opened), scale, arrows, standIn: true }, null),
      standIn.body,
    );
  const name = standIn.lens(opened);
  const lens = parts.lens ?? keep(desk.putKit('lenses', { ...newLens('', name, opened), standIn: true }, null), name);
  return { parts: { ...parts, body, lens, focalLength: parts.focalLength ?? USUAL_LENGTH }, lengthToo: parts.focalLength === null };
}

function keep(saved: string | ReturnType<KitDesk['putKit']>, name: string) {
  if (typeof saved === 'string') return pieceOf({ id: saved, name });
  return saved.ok ? pieceOf({ id: saved.value, name }) : null;
}
