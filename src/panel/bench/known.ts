// What the kit knows already of the body, the lens and the converter at the bench, as the fields would have it typed.
import type { Situation } from '../../kit/kit.ts';
import { widestAt, zooms } from '../../kit/lens.ts';
import { writeNumber } from '../../optics/quantity.ts';
import { writeSensor } from '../../optics/sensor.ts';
import type { Session } from '../session/session.ts';
import { picksOf, type Draft, type Picks } from '../start/draft.ts';
import { metresTyped } from '../words/quantities.ts';
import type { FromKit } from './typed.ts';

type Pieces = Pick<Picks, 'body' | 'lens' | 'converter'>;

export function knownOf(session: Session, draft: Draft, focalLength: number): FromKit {
  const { body, lens, converter } = piecesOf(session, draft);
  const widest = lens === null ? null : widestAt(lens, focalLength);
  return {
    typed: {
      ...(widest !== null && { aperture: writeNumber(widest, 1) }),
      ...(lens && lens.closest !== null && { closest: `${metresTyped(lens.closest)} m` }),
      ...(body?.sensor && { sensor: writeSensor(body.sensor) }),
      ...(converter && { converter: writeNumber(converter.factor, 2) }),
    },
    traits: {
      ...(lens && { zoom: zooms(lens) }),
      ...(body && { rearButton: body.trigger === 'rear button', manualAtBody: ['on the body', 'on both'].includes(body.manualFocus) }),
    },
  };
}

/** Those of the sweep under way, or else those picked for the next one. */
function piecesOf({ sweep, kit, records }: Session, draft: Draft): Pieces {
  const { bodies, lenses, converters, situations } = kit.value;
  if (!sweep.value) return picksOf(draft, kit.value, records.value);
  const { situation } = sweep.value.plan.subject;
  const one: Situation | undefined = situations.find(({ id }) => id === situation);
  const named = <Piece extends { readonly id: string }>(all: readonly Piece[], id: string | null | undefined) => all.find((each) => each.id === id) ?? null;
  return { body: named(bodies, one?.body), lens: named(lenses, one?.lens), converter: named(converters, one?.converter) };
}
