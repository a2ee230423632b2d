// Fills the kit in from a photograph: dropped or chosen, read on this computer, and offered field by field. Nothing is taken
// unasked, and nothing is sent anywhere.
import { useState } from 'preact/hooks';
import { newBody, newLens, usualDistance, type Body, type Lens } from '../../kit/kit.ts';
import { offersOf, takenWith, type Offer } from '../../kit/photograph/offers.ts';
import { FIRST_BYTES, readPhotograph, type Photograph } from '../../kit/photograph/photograph.ts';
import { readStart } from '../../platform/files.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Tick } from '../parts/tick.tsx';
import { useSurroundings } from '../useSession.ts';
import { inMetres, inMillimetres, onDay } from '../words/quantities.ts';

export function FromPhotograph() {
  const { session, way } = useSurroundings();
  const [read, setRead] = useState<Photograph | null>(null);
  const [said, setSaid] = useState('');
  const [wanted, setWanted] = useState<ReadonlySet<Offer>>(new Set());
  const [offers, setOffers] = useState<readonly Offer[]>([]);

  const look = async (file: File): Promise<void> => {
    const bytes = await readStart(file, FIRST_BYTES);
    const photograph = bytes.ok ? readPhotograph(bytes.value, -new Date().getTimezoneOffset()) : bytes;
    setSaid(photograph.ok ? '' : photograph.sentence);
    setRead(photograph.ok ? photograph.value : null);
    setOffers(photograph.ok ? offersOf(photograph.value).filter(({ to }) => to !== 'situation') : []);
    setWanted(new Set());
  };

  const take = (photograph: Photograph): void => {
    const { body, lens } = takenWith(photograph, session.kit.peek());
    const fields = (to: 'body' | 'lens') => Object.fromEntries([...wanted].filter((offer) => offer.to === to).map(({ field, value }) => [field, value]));
    const [bodyFields, lensFields] = [fields('body'), fields('lens')];
    const now = session.clock();
    const saved = [
      Object.keys(bodyFields).length === 0
        ? null
        : session.putKit('bodies', { ...(body ?? newBody('', photograph.bodyModel ?? 'Body', now)), ...bodyFields } as Body, body?.changed ?? null),
      Object.keys(lensFields).length === 0
        ? null
        : session.putKit('lenses', { ...(lens ?? newLens('', photograph.lensModel ?? 'Lens', now)), ...lensFields } as Lens, lens?.changed ?? null),
    ];
    const refused = saved.flatMap((one) => (one && !one.ok ? one.faults : []))[0];
    setSaid(refused ? refused.sentence : 'Taken into the kit.');
    if (refused) return;
    setOffers(offers.filter((offer) => !wanted.has(offer)));
    setWanted(new Set());
  };

  const openSituation = ({ focalLength, distance }: Photograph, body: Body, lens: Lens): void => {
    if (focalLength === null) return;
    const wished = { body: body.id, lens: lens.id, converter: null, focalLength, distance: distance ?? usualDistance(focalLength) };
    const kept = session.saveSituation(wished);
    if (kept.ok) way.go({ at: 'situation', id: kept.id });
    else setSaid(kept.faults[0]?.sentence ?? '');
  };

  const { body, lens } = read ? takenWith(read, session.kit.value) : { body: null, lens: null };
  return (
    <section class="card" aria-labelledby="photograph">
      <h2 id="photograph">Fill in from a photograph</h2>
      <ChooseFile label="A photograph" accept="image/*,.tif,.tiff,.dng" onFile={(file) => void look(file)} />
      <p class="muted small">It is read on this computer and sent nowhere.</p>
      {said && <p role="alert">{said}</p>}
      {read && (
        <>
          <p class="small">
            {read.taken !== null && `Taken on ${onDay(read.taken)}. `}
            {read.focalLength !== null && `At ${inMillimetres(read.focalLength)}. `}
            {read.aperture !== null && `f/${read.aperture}. `}
            {read.distance !== null && `Focused at ${inMetres(read.distance)}. `}
            {body ? `Body in your kit: ${body.name}.` : 'The body is not in your kit yet.'}{' '}
            {lens ? `Lens in your kit: ${lens.name}.` : 'The lens is not in your kit yet.'}
          </p>
          {offers.map((offer) => (
            <Tick
              key={`${offer.to} ${offer.field}`}
              label={`${offer.to === 'body' ? 'Body' : 'Lens'} ${LABEL[offer.field]}: ${valueOf(offer)}`}
              on={wanted.has(offer)}
              onChange={(on) => setWanted(new Set(on ? [...wanted, offer] : [...wanted].filter((one) => one !== offer)))}
            />
          ))}
          {offers.length > 0 && (
            <button type="button" disabled={wanted.size === 0} onClick={() => take(read)}>
              Take what is ticked
            </button>
          )}
          {read.focalLength !== null && body && lens && (
            <button type="button" onClick={() => openSituation(read, body, lens)}>
              Open its situation in the logbook
            </button>
          )}
        </>
      )}
    </section>
  );
}

const LABEL: Record<Offer['field'], string> = {
  model: 'model',
  serial: 'serial number',
  focal: 'focal length',
  widest: 'widest aperture',
  focalLength: 'focal length',
  distance: 'distance',
};

function valueOf({ field, value }: Offer): string {
  if (typeof value !== 'object') return String(value);
  const range = value.from === value.to ? String(value.from) : `${value.from} to ${value.to}`;
  return field === 'focal' ? `${range} mm` : `f/${range}`;
}
