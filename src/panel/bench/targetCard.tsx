// The target for this rig: how large it is, the page that prints it, and whether the print came out at true size.
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { BenchRoom, isMarked } from './benchRoom.tsx';
import { Says } from './fact.tsx';
import type { PrintHere } from './printHere.ts';
import type { Reckoned } from './reckon.ts';
import { Choosing, Typing } from './typing.tsx';

interface Props {
  readonly reckoned: Reckoned;
  readonly printed: PrintHere;
}

export function TargetCard({ reckoned: { print, faults, rig }, printed: { address, print: drawn } }: Props) {
  const { target: say, choices } = words('bench');
  const { session } = useSurroundings();
  return (
    <BenchRoom title={say.title} marked={isMarked(faults, ['printed'])}>
      {rig === null && <Says>{say.wanted}</Says>}
      {drawn && <Says>{say.size(drawn.measure.bar, drawn.measure.field, drawn.sheets)}</Says>}
      <Choosing field="paper" from={choices.paper} />
      <button type="button" disabled={address === null} onClick={() => address !== null && session.openPage(`target.html#${address}`)}>
        {say.open}
      </button>
      <Typing field="printed" faults={faults} />
      {print && <output>{say.print(print)}</output>}
    </BenchRoom>
  );
}
