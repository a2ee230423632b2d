// Everything about the value in the camera: what to enter where several situations share a place, what stands there, and a value put in
// by hand.
import type { Shelved } from '../../logbook/shelf.ts';
import type { Scale } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { ScreenRoom } from '../parts/room.tsx';
import { useSurroundings } from '../useSession.ts';
import { EnterForm } from './enterForm.tsx';
import { HandForm } from './handForm.tsx';

interface Props {
  readonly shelved: Shelved;
  readonly scale: Scale;
  /** The form for a value by hand stands on the screen already; that value is then to be entered here. */
  readonly byHand: boolean;
}

export function EnteringRoom({ shelved: { subject, situation, measured, entered, value }, scale, byHand }: Props) {
  const say = words('situation');
  const { way } = useSurroundings();
  return (
    <ScreenRoom title={say.rooms.entering} state={say.rooms.inCamera(entered?.value ?? null)} open={byHand}>
      {situation && (
        <button type="button" onClick={() => way.go({ at: 'entering', id: situation.id })}>
          {say.toEnter}
        </button>
      )}
      <EnterForm key={measured?.id} about={[{ subject, record: measured?.id ?? null }]} scale={scale} suggested={measured?.chosen ?? value} />
      {!byHand && <HandForm subject={subject} scale={scale} />}
    </ScreenRoom>
  );
}
