// A converter: a name and a factor.
import { useState } from 'preact/hooks';
import { newConverter, type Converter } from '../../kit/kit.ts';
import { Field } from '../parts/field.tsx';
import { useSession } from '../useSession.ts';
import { KitForm } from './kitForm.tsx';
import { asNumber, asText } from './typedFields.ts';

export function ConverterScreen({ id }: { readonly id: string }) {
  const session = useSession();
  const [opened] = useState(() => session.kit.peek().converters.find((one) => one.id === id) ?? newConverter('', '', 1.4, session.clock()));
  const [name, setName] = useState(opened.name);
  const [factor, setFactor] = useState(asText(opened.factor));
  const converter = (): Converter => ({ ...opened, name, factor: asNumber(factor) ?? Number.NaN });
  return (
    <KitForm list="converters" title={opened.name || 'New converter'} opened={opened} typed={converter}>
      {(faultOf) => (
        <>
          <Field label="Name" text={name} fault={faultOf('name')} hint="Your own name for it." onTyped={setName} />
          <Field label="Factor" text={factor} fault={faultOf('factor')} numeric onTyped={setFactor} />
        </>
      )}
    </KitForm>
  );
}
