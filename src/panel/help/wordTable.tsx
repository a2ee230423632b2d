// Every word with its key.
import { ScreenRoom } from '../parts/room.tsx';
import { WORDS } from '../../sweep/inputs.ts';
import { words } from '../../words/catalogue.ts';
import { WordRows } from './wordRows.tsx';

export function WordTable() {
  const say = words('help').spoken;
  return (
    <ScreenRoom title={say.title}>
      <WordRows of={WORDS} />
      <p>{say.together}</p>
    </ScreenRoom>
  );
}
