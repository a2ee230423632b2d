// The help: what is possible at this moment first; behind it, folded, everything that can be told, in the words, keys and presses that the
// recogniser itself works with.
import { ToAbout } from '../about/toAbout.tsx';
import { Heading } from '../parts/heading.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { LightTable } from './lightTable.tsx';
import { Now } from './now.tsx';
import { PressTable } from './pressTable.tsx';
import { WordTable } from './wordTable.tsx';

export function HelpScreen() {
  const { way } = useSurroundings();
  const { title, before } = words('help');
  return (
    <>
      <Heading onBack={() => way.back()}>{title}</Heading>
      <Now />
      <div class="rooms">
        <ScreenRoom title={before.title}>
          <ul>
            {before.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ul>
          <p class="muted small">{before.manual}</p>
        </ScreenRoom>
        <LightTable />
        <WordTable />
        <PressTable />
      </div>
      <ToAbout />
    </>
  );
}
