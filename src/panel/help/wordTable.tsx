// Every word with its key.
import { Room } from '../parts/room.tsx';
import { WORDS } from '../../sweep/inputs.ts';
import { words } from '../../words/catalogue.ts';
import { WordRows } from './wordRows.tsx';

export function WordTable() {
  const say = words('help').spoken;
  return (
    <Room title={say.title}>
      <WordRows of={WORDS} />
      <p>{say.together}</p>
    </Room>
  );
}
