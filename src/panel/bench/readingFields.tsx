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
import { enteredAt } from './fields.ts';

export type Typable = Exclude<ReadingKind, 'live view'>;

export function ReadingFields({ kind, reckoned }: { readonly kind: Typable; readonly reckoned: Reckoned }) {
  const say = words('bench');
  const entered = enteredAt(useSurroundings().bench);
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
          {entered.iso && entered.metered && entered.shutter && <Says>{exposureInWords(entered)}</Says>}
        </>
      );
    case 'placement':
      return <Typing field="share" />;
    case 'mirror':
    case 'spot':
    case 'sides': {
      const corners = cornersOf(reckoned);
      const whole = kind !== 'sides' ? entered[kind] : entered.left && entered.right && entered.top && entered.bottom;
      return (
        <>
          <SquareFields by={kind} corners={corners} />
          {whole && <Says>{squareInWords(entered, reckoned, corners)}</Says>}
        </>
      );
    }
    case 'magnification':
      return <Typing field="scalePixels" faults={faults} />;
    case 'temperature':
      return <Typing field="celsius" />;
  }
}
