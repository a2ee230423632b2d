// One situation: the answer first, with what one can do about it; behind it rooms to open: what it rests on, the value in the camera, the
// other situations of the lens, the newest sweep once more, and figures.
import { useMemo } from 'preact/hooks';
import { othersOfLens } from '../../logbook/sameLens.ts';
import type { Shelved } from '../../logbook/shelf.ts';
import { words } from '../../words/catalogue.ts';
import { Heading } from '../parts/heading.tsx';
import { late } from '../parts/late.tsx';
import { Refusal } from '../parts/refusal.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { useBeginning } from '../start/useBeginning.ts';
import { useSurroundings } from '../useSession.ts';
import { SituationAnswer } from './situationAnswer.tsx';
import { EnteringRoom } from './enteringRoom.tsx';
import { EvidenceRoom } from './evidence.tsx';
import { Figures } from './figures.tsx';
import { HandForm } from './handForm.tsx';
import { Shelf } from './shelf.tsx';
import { useShelf } from './useShelf.ts';

const Replay = late(async () => (await import('./replay.tsx')).Replay, 'record', 'spoken', 'sweep');

interface Props {
  readonly id: string;
  /** Opened to put a value in by hand. */
  readonly byHand: boolean;
}

export function SituationScreen({ id, byHand }: Props) {
  const { way } = useSurroundings();
  const shelf = useShelf();
  const shelved = shelf.find(({ subject }) => subject.situation === id);
  return (
    <>
      <Heading onBack={() => way.back()}>{shelved?.subject.lens ?? words('logbook').title}</Heading>
      {shelved ? <Page key={id} shelved={shelved} shelf={shelf} byHand={byHand} /> : <p>{words('situation').gone}</p>}
    </>
  );
}

interface PageProps {
  readonly shelved: Shelved;
  readonly shelf: readonly Shelved[];
  readonly byHand: boolean;
}

function Page({ shelved, shelf, byHand }: PageProps) {
  const say = words('situation');
  const { session, way } = useSurroundings();
  const { subject, value, measured, situation, history, retired } = shelved;
  const body = session.kit.value.bodies.find(({ id }) => id === situation?.body);
  const others = useMemo(() => othersOfLens(shelf, shelved), [shelf, shelved]);
  const newest = session.records.value.find(({ id, journal }) => id === measured?.id && journal.length > 1);
  return (
    <>
      <p class="muted small">{words('logbook').details(subject)}</p>
      <SituationAnswer shelved={shelved} />
      {byHand && body && <HandForm subject={subject} scale={body.scale} open />}
      {situation && !retired && session.sweep.value === null && <Sweeps situation={situation.id} known={value !== null} />}
      {situation && (
        <button type="button" onClick={() => way.go({ at: 'photographs', situation: situation.id })}>
          {say.photographs}
        </button>
      )}
      <div class="rooms">
        <EvidenceRoom history={history} />
        {body && <EnteringRoom shelved={shelved} scale={body.scale} byHand={byHand} />}
        {others.length > 0 && (
          <ScreenRoom title={say.rooms.others} state={say.rooms.situations(others.length)}>
            <Shelf shelf={others} />
          </ScreenRoom>
        )}
        {newest && <Replay journal={newest.journal} />}
        <Figures shelved={shelved} />
      </div>
      {situation && (
        <button type="button" class="link" onClick={() => session.retireKit('situations', situation.id, situation.retired === null)}>
          {situation.retired === null ? say.retire : say.bringBack}
        </button>
      )}
    </>
  );
}

/** A re-check begins at the old value and is done as soon as the centre is sure. */
function Sweeps({ situation, known }: { readonly situation: string; readonly known: boolean }) {
  const say = words('situation');
  const { refusal, begin } = useBeginning();
  const recheck = () => begin({ with: 'kit', situation, care: 'quick' });
  const measure = () => begin({ with: 'kit', situation });
  return (
    <>
      {known ? (
        <div class="row">
          <button type="button" class="chief grow" onClick={() => void recheck()}>
            {say.recheck}
          </button>
          <button type="button" class="grow" onClick={() => void measure()}>
            {say.anew}
          </button>
        </div>
      ) : (
        <button type="button" class="chief" onClick={() => void measure()}>
          {say.measure}
        </button>
      )}
      <Refusal sentence={refusal} />
    </>
  );
}
