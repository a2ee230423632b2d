// A converter: a name and a factor.
import { useState } from 'preact/hooks';
import { newConverter, type Converter } from '../../kit/kit.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import { useSession } from '../useSession.ts';
import { KitForm } from './kitForm.tsx';
import { asNumber, asText } from './typedFields.ts';

export function ConverterScreen({ id }: { readonly id: string }) {
  const { fields, lists } = words('kit');
  const session = useSession();
  const [opened] = useState(() => session.kit.peek().converters.find((one) => one.id === id) ?? newConverter('', '', 1.4, session.clock()));
  const [name, setName] = useState(opened.name);
  const [factor, setFactor] = useState(asText(opened.factor));
  const converter = (): Converter => ({ ...opened, name, factor: asNumber(factor) ?? Number.NaN });
  return (
    <KitForm list="converters" title={opened.name || lists.converter.unnamed} opened={opened} typed={converter}>
      {(faultOf) => (
        <>
          <Field label={fields.name} text={name} fault={faultOf('name')} hint={fields.yourName} onTyped={setName} />
          <Field label={fields.factor} text={factor} fault={faultOf('factor')} numeric onTyped={setFactor} />
        </>
      )}
    </KitForm>
  );
}
