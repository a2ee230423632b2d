// The fields of each reading that is typed, and what follows from them at once.
import type { ReadingKind } from '../../optics/setUp/reading.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Says } from './fact.tsx';
import { cornersOf } from './given.ts';
import { LightFields, exposureInWords } from './lightCard.tsx';
import type { Reckoned } from './reckon.ts';
import { SquareFields, squareInWords } from './squareCard.tsx';
import { Typing } from './typing.tsx';
import { typedAt } from './fields.ts';

export type Typable = Exclude<ReadingKind, 'live view'>;

export function ReadingFields({ kind, reckoned }: { readonly kind: Typable; readonly reckoned: Reckoned }) {
  const say = words('bench');
  const typed = typedAt(useSurroundings().bench);
  const { faults, print, unit } = reckoned;
  switch (kind) {
    case 'old value':
      return <Typing field="old" />;
    case 'print':
      return (
        <>
          <Typing field="printed" faults={faults} />
          {print && <Says>{say.target.print(print)}</Says>}
        </>
      );
    case 'distance':
      return <Typing field="distance" label={say.measured[unit]} faults={faults} />;
    case 'light':
      return (
        <>
          <LightFields />
          {typed.iso && typed.metered && typed.shutter && <Says>{exposureInWords(typed)}</Says>}
        </>
      );
    case 'placement':
      return <Typing field="share" />;
    case 'mirror':
    case 'spot':
    case 'sides': {
      const corners = cornersOf(reckoned);
      const entered = kind !== 'sides' ? typed[kind] : typed.left && typed.right && typed.top && typed.bottom;
      return (
        <>
          <SquareFields by={kind} corners={corners} />
          {entered && <Says>{squareInWords(typed, reckoned, corners)}</Says>}
        </>
      );
    }
    case 'magnification':
      return <Typing field="scalePixels" faults={faults} />;
    case 'temperature':
      return <Typing field="celsius" />;
  }
}
