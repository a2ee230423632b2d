// The correction that a series is about, as it is typed.
import { isOnScale, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import type { PictureUse } from './pictureUse.ts';
import { typedNumber } from '../words/typedNumber.ts';

interface Props {
  readonly use: PictureUse;
  readonly typed: string;
  readonly scale: Scale;
  readonly onTyped: (text: string) => void;
}

export function ValueToCheck({ use, typed, scale, onTyped }: Props) {
  const say = words('series').value;
  const fault = typed.trim() !== '' && valueTyped(typed, scale) === null ? say.offTheScale(scale) : undefined;
  return <Field label={say.label} text={typed} hint={say.hint[use]} fault={fault} onTyped={onTyped} />;
}

/** Null for what is no correction of the scale. */
export function valueTyped(typed: string, scale: Scale): Steps | null {
  const value = typedNumber(typed);
  return isOnScale(scale, value) ? value : null;
}
