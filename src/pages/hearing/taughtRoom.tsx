// One room of words to teach, with how many of them are taught beside its name, and in it each group with what it is for.
import { ScreenRoom } from '../../panel/parts/room.tsx';
import type { Take } from '../../voice/ownWords/take.ts';
import { words as sentences } from '../../words/catalogue.ts';
import type { Check } from './check.ts';
import type { TaughtGroup } from './groups.ts';
import { wordsOf, type RoomOfWords } from './rooms.ts';

interface Props {
  readonly room: RoomOfWords;
  readonly check: Check;
  readonly takes: readonly Take[];
  readonly open: boolean;
}

export function TaughtRoom({ room, check, takes, open }: Props) {
  const taught = new Set(takes.map(({ word }) => word));
  const all = wordsOf(room);
  return (
    <ScreenRoom
      title={sentences('hearing').own.rooms[room.is]}
      state={sentences('hearing').own.of(all.filter((word) => taught.has(word)).length, all.length)}
      open={open}
    >
      {room.groups.map((group) => (
        <Group key={group.is} group={group} named={room.groups.length > 1} check={check} takes={takes} chief={open && group === room.groups[0]} />
      ))}
    </ScreenRoom>
  );
}

interface GroupProps extends Pick<Props, 'check' | 'takes'> {
  readonly group: TaughtGroup;
  /** The room holds other groups as well. */
  readonly named: boolean;
  readonly chief: boolean;
}

function Group({ group: { is, words }, named, check, takes, chief }: GroupProps) {
  const taught = new Set(takes.map(({ word }) => word));
  const left = words.filter((word) => !taught.has(word));
  const stateOf = (word: string): string => {
    if (!taught.has(word)) return sentences('hearing').own.is.notTaught;
    const more = takes.filter((take) => take.learned && take.word === word).length;
    return more > 0 ? sentences('hearing').own.is.learned(more) : sentences('hearing').own.is.taught;
  };
  return (
    <div class="stack">
      {named && <h3>{sentences('hearing').own.groups[is].name}</h3>}
      <p class="muted small">{sentences('hearing').own.groups[is].for}</p>
      {check.listens.value && !check.teaching.value && left.length > 1 && (
        <button type="button" class={chief ? 'chief' : undefined} onClick={() => check.teach(left)}>
          {sentences('hearing').own.group(left.length, words.length)}
        </button>
      )}
      <ul class="taught">
        {words.map((word) => (
          <li key={word}>
            <span>
              {word} <span class="muted small">{stateOf(word)}</span>
            </span>
            <button
              type="button"
              disabled={!check.listens.value}
              aria-label={taught.has(word) ? sentences('hearing').own.again(word) : sentences('hearing').own.teach(word)}
              onClick={() => check.teach([word])}
            >
              {taught.has(word) ? sentences('hearing').own.short.again : sentences('hearing').own.short.teach}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
