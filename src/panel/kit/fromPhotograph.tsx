// Fills the kit in from a photograph: dropped or chosen, read on this computer, and offered field by field. Nothing is taken
// unasked, and nothing is sent anywhere.
import { useState } from 'preact/hooks';
import { newBody, newLens, usualDistance, type Body, type Lens } from '../../kit/kit.ts';
import { offersOf, takenWith, type Offer } from '../../kit/photograph/offers.ts';
import { FIRST_BYTES, readPhotograph, type Photograph } from '../../kit/photograph/photograph.ts';
import { readStart } from '../../platform/files.ts';
import { failed } from '../../result.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Tick } from '../parts/tick.tsx';
import { useSurroundings } from '../useSession.ts';

export function FromPhotograph() {
  const say = words('kit').photograph;
  const { session, way } = useSurroundings();
  const [read, setRead] = useState<Photograph | null>(null);
  const [said, setSaid] = useState('');
  const [wanted, setWanted] = useState<ReadonlySet<Offer>>(new Set());
  const [offers, setOffers] = useState<readonly Offer[]>([]);

  const look = async (file: File): Promise<void> => {
    const bytes = await readStart(file, FIRST_BYTES);
    const photograph = bytes.ok ? readPhotograph(bytes.value, -new Date().getTimezoneOffset()) : failed('gone' as const);
    setSaid(photograph.ok ? '' : say.fault[photograph.fault]);
    setRead(photograph.ok ? photograph.value : null);
    setOffers(photograph.ok ? offersOf(photograph.value).filter(({ to }) => to !== 'situation') : []);
    setWanted(new Set());
  };

  const take = async (photograph: Photograph): Promise<void> => {
    const { body, lens } = takenWith(photograph, session.kit.peek());
    const fields = (to: 'body' | 'lens') => Object.fromEntries([...wanted].filter((offer) => offer.to === to).map(({ field, value }) => [field, value]));
    const [bodyFields, lensFields] = [fields('body'), fields('lens')];
    const now = session.clock();
    const saved = [
      Object.keys(bodyFields).length === 0
        ? null
        : session.putKit('bodies', { ...(body ?? newBody('', photograph.bodyModel ?? say.body, now)), ...bodyFields } as Body, body?.changed ?? null),
      Object.keys(lensFields).length === 0
        ? null
        : session.putKit('lenses', { ...(lens ?? newLens('', photograph.lensModel ?? say.lens, now)), ...lensFields } as Lens, lens?.changed ?? null),
    ];
    const refused = saved.flatMap((one) => (one && !one.ok ? one.fault : []))[0];
    if (refused) return setSaid(refused.sentence);
    setOffers(offers.filter((offer) => !wanted.has(offer)));
    setWanted(new Set());
    setSaid((await session.onDisk()) ? say.used : words('session').stored.notOnDisk);
  };

  const openSituation = ({ focalLength, distance }: Photograph, body: Body, lens: Lens): void => {
    if (focalLength === null) return;
    const wished = { body: body.id, lens: lens.id, converter: null, focalLength, distance: distance ?? usualDistance(focalLength) };
    const kept = session.saveSituation(wished);
    if (kept.ok) way.go({ at: 'situation', id: kept.value });
    else setSaid(kept.fault[0]?.sentence ?? '');
  };

  const { body, lens } = read ? takenWith(read, session.kit.value) : { body: null, lens: null };
  return (
    <section class="card" aria-labelledby="photograph">
      <h2 id="photograph">{say.title}</h2>
      <ChooseFile label={say.choose} hint={say.drop} accept="image/*,.tif,.tiff,.dng" onFile={(file) => void look(file)} />
      <p class="muted small">{say.stays}</p>
      {said && <p role="alert">{said}</p>}
      {read && (
        <>
          <p class="small">{run(say.read(read, body?.name ?? null, lens?.name ?? null))}</p>
          {offers.map((offer) => (
            <Tick
              key={`${offer.to} ${offer.field}`}
              label={say.offer(offer)}
              on={wanted.has(offer)}
              onChange={(on) => setWanted(new Set(on ? [...wanted, offer] : [...wanted].filter((one) => one !== offer)))}
            />
          ))}
          {offers.length > 0 && (
            <button type="button" disabled={wanted.size === 0} onClick={() => void take(read)}>
              {say.use}
            </button>
          )}
          {read.focalLength !== null && body && lens && (
            <button type="button" onClick={() => openSituation(read, body, lens)}>
              {say.openSituation}
            </button>
          )}
        </>
      )}
    </section>
  );
}
