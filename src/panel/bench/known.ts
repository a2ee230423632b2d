// What the kit knows already of the body, the lens and the converter at the bench, as the fields would have it typed.
import type { Body, Converter, Lens } from '../../kit/kit.ts';
import { widestAt, zooms } from '../../kit/lens.ts';
import { partsOf } from '../../kit/told.ts';
import { numberTyped } from '../words/numberTyped.ts';
import { writeSensor } from '../../optics/sensor.ts';
import type { Session } from '../session/session.ts';
import type { Draft } from '../start/draft.ts';
import { previewOf } from '../start/preview.ts';
import type { Millimetres } from '../../units.ts';
import { entryOf } from './entry.ts';
import { measuredWorth } from './measuredWorth.ts';
import type { FromKit } from './typed.ts';

interface Pieces {
  readonly body: Body | null;
  readonly lens: Lens | null;
  readonly converter: Converter | null;
}

export function knownOf(session: Session, draft: Draft, focalLength: Millimetres): FromKit {
  const { body, lens, converter } = piecesOf(session, draft);
  const widest = lens === null ? null : widestAt(lens, focalLength);
  const { kit, proofs } = session;
  return {
    worth: body && lens && measuredWorth(kit.value, proofs.value, { body, lens, converter, focalLength }),
    entries: {
      ...(widest !== null && { aperture: entryOf('aperture', numberTyped(widest, 1), 'm') }),
      ...(converter && { converter: entryOf('converter', numberTyped(converter.factor, 2), 'm') }),
    },
    values: lens && lens.closest !== null ? { closest: lens.closest } : {},
    picks: body?.sensor ? { sensor: writeSensor(body.sensor) } : {},
    traits: {
      ...(lens && { zoom: zooms(lens) }),
      ...(body && { rearButton: body.trigger === 'rear button', manualAtBody: body.manualFocus === 'on the body' || body.manualFocus === 'on both' }),
    },
  };
}

/** Those of the sweep under way, or else those picked for the next one. */
function piecesOf({ sweep, kit, records }: Session, draft: Draft): Pieces {
  const { bodies, lenses, converters } = kit.value;
  const parts = sweep.value
    ? partsOf(sweep.value.plan.subject, kit.value)
    : previewOf(draft, { kit: kit.value, records: records.value, offers: 'last lens' }).parts;
  const named = <Piece extends { readonly id: string }>(all: readonly Piece[], id: string | null | undefined) => all.find((each) => each.id === id) ?? null;
  return { body: named(bodies, parts.body?.id), lens: named(lenses, parts.lens?.id), converter: named(converters, parts.converter?.id) };
}
