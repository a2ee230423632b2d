// A lens. Two copies of one lens are two of these, told apart by their serials.
import { useState } from 'preact/hooks';
import { newLens, type Lens } from '../../kit/kit.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import { FieldRow } from '../parts/fieldRow.tsx';
import { useSession } from '../useSession.ts';
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
    closest: asText(opened.closest === null ? null : opened.closest / 1000),
  });
  const change = (field: keyof typeof typed) => (text: string) => setTyped({ ...typed, [field]: text });
  const field = (label: string, of: keyof typeof typed) => ({ label, text: typed[of], onTyped: change(of) });
  const closest = asNumber(typed.closest);
  const lens = (): Lens =>
    ({
      ...opened,
      name: typed.name,
      model: asWords(typed.model),
      serial: asWords(typed.serial),
      focal: both(typed.from, typed.to),
      widest: both(typed.widestFrom, typed.widestTo),
      closest: closest === null ? null : closest * 1000,
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

function both(from: string, to: string): { from: number | null; to: number | null } | null {
  const [first, last] = [asNumber(from), asNumber(to)];
  return first === null && last === null ? null : { from: first, to: last ?? first };
}
