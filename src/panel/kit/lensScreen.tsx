// A lens. Two copies of one lens are two of these, told apart by their serials.
import { useState } from 'preact/hooks';
import { newLens, type Lens } from '../../kit/kit.ts';
import { inUnit } from '../../optics/writtenLength.ts';
import type { Millimetres } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { countryInUse } from '../../words/countryInUse.ts';
import { Field } from '../parts/field.tsx';
import { FieldRow } from '../parts/fieldRow.tsx';
import { useSession } from '../useSession.ts';
import { typedDistance, typedFocalLength } from '../words/typedLength.ts';
import { KitForm } from './kitForm.tsx';
import { asNumber, asText, asWords } from './typedFields.ts';

export function LensScreen({ id }: { readonly id: string }) {
  const { fields, lists } = words('kit');
  const session = useSession();
  const [opened] = useState(() => session.kit.peek().lenses.find((one) => one.id === id) ?? newLens('', '', session.clock()));
  const [typed, setTyped] = useState({
    name: opened.name,
    model: asText(opened.model),
    serial: asText(opened.serial),
    from: asText(opened.focal?.from),
    to: asText(opened.focal?.to),
    widestFrom: asText(opened.widest?.from),
    widestTo: asText(opened.widest?.to),
    closest: closestOf(opened),
  });
  const change = (field: keyof typeof typed) => (text: string) => setTyped({ ...typed, [field]: text });
  const field = (label: string, of: keyof typeof typed) => ({ label, text: typed[of], onTyped: change(of) });
  const lens = (): Lens =>
    ({
      ...opened,
      name: typed.name,
      model: asWords(typed.model),
      serial: asWords(typed.serial),
      focal: both(lengthOrNull(typed.from), lengthOrNull(typed.to)),
      widest: both(asNumber(typed.widestFrom), asNumber(typed.widestTo)),
      closest: typed.closest === closestOf(opened) ? opened.closest : typedDistanceOrNull(typed.closest),
    }) as Lens;
  return (
    <KitForm list="lenses" title={opened.name || lists.lens.unnamed} opened={opened} typed={lens}>
      {(faultOf) => (
        <>
          <Field label={fields.name} text={typed.name} fault={faultOf('name')} hint={fields.yourName} onTyped={change('name')} />
          <Field label={fields.serial} text={typed.serial} fault={faultOf('serial')} onTyped={change('serial')} />
          <Field label={fields.model} text={typed.model} fault={faultOf('model')} onTyped={change('model')} />
          <FieldRow
            legend={fields.focal.legend}
            hint={fields.focal.hint}
            fault={faultOf('focal')}
            fields={[field(fields.focal.from, 'from'), field(fields.focal.to, 'to')]}
          />
          <FieldRow
            legend={fields.widest.legend}
            fault={faultOf('widest')}
            fields={[field(fields.widest.from, 'widestFrom'), field(fields.widest.to, 'widestTo')]}
          />
          <Field label={fields.closest} text={typed.closest} fault={faultOf('closest')} numeric onTyped={change('closest')} />
        </>
      )}
    </KitForm>
  );
}

const lengthOrNull = (text: string): number | null => (text.trim() === '' ? null : typedFocalLength(text));

const both = (first: number | null, last: number | null): { from: number | null; to: number | null } | null =>
  first === null && last === null ? null : { from: first, to: last ?? first };

/** What stands in its field; left so, it is still as long as it was. */
const closestOf = ({ closest }: Lens): string => asText(closest === null ? null : Number(inUnit(closest, countryInUse.value.unit).toFixed(3)));
const typedDistanceOrNull = (text: string): Millimetres | null => (text.trim() === '' ? null : typedDistance(text));
