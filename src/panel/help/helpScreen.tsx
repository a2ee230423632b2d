// Everything that can be told, in the words, keys and presses that the recogniser itself works with.
import { Heading } from '../parts/heading.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { LightTable } from './lightTable.tsx';
import { PressTable } from './pressTable.tsx';
import { WordTable } from './wordTable.tsx';

export function HelpScreen() {
  const { way } = useSurroundings();
  const { title, about, before } = words('help');
  return (
    <>
      <Heading onBack={() => way.back()}>{title}</Heading>
      <p>{about}</p>
      <LightTable />
      <WordTable />
      <PressTable />
      <section aria-labelledby="before">
        <h2 id="before">{before.title}</h2>
        <ul>
          {before.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ul>
        <p class="muted small">{before.manual}</p>
      </section>
    </>
  );
}
