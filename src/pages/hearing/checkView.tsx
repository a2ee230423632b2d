// The hearing check as it is seen: the meter with its advice, what was heard, and every word that can be taught, in rooms to open. The
// words that a sweep needs come first.
import type { TaughtGroup } from './groups.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import type { Check } from './check.ts';
import { TAKES_A_WORD } from './lesson.ts';
import { openRoomOf, roomsOf } from './rooms.ts';
import { TaughtRoom } from './taughtRoom.tsx';

interface Props {
  readonly check: Check;
  readonly groups: readonly TaughtGroup[];
}

export function CheckView({ check, groups }: Props) {
  return (
    <>
      <h1>{words('hearing').title}</h1>
      <p>{words('hearing').stays}</p>
      <Room check={check} />
      <Words check={check} groups={groups} />
    </>
  );
}

function Room({ check }: Pick<Props, 'check'>) {
  const level = check.level.value;
  return (
    <section aria-labelledby="room">
      <h2 id="room">{words('hearing').room.title}</h2>
      {check.listens.value ? (
        <label>
          {words('hearing').room.level}
          <meter min={-90} max={0} low={-60} high={-3} value={level} />
        </label>
      ) : (
        <button type="button" class="chief" onClick={() => void check.listen()}>
          {words('hearing').room.listen}
        </button>
      )}
      <output>{check.state.value}</output>
      <Teaching check={check} />
      <output class="saying">{check.heard.value}</output>
    </section>
  );
}

function Words({ check, groups }: Props) {
  const takes = check.takes.value;
  const rooms = roomsOf(groups);
  const teaching = check.teaching.value?.word;
  const open = openRoomOf(rooms, new Set(takes.map(({ word }) => word)), teaching ?? null);
  return (
    <section aria-labelledby="words">
      <h2 id="words">{words('hearing').own.title}</h2>
      <p>{run(words('hearing').own.about(TAKES_A_WORD))}</p>
      <div class="rooms">
        {rooms.map((room) => (
          <TaughtRoom key={room.is} room={room} check={check} takes={takes} open={room.is === open} />
        ))}
      </div>
      <p class="muted small">{words('hearing').kept}</p>
      <p class="muted small">{words('hearing').own.learns}</p>
      {takes.some((take) => take.learned) && (
        <button type="button" onClick={() => void check.forgetLearned()}>
          {words('hearing').own.forgetLearned}
        </button>
      )}
      {takes.length > 0 && (
        <button type="button" onClick={() => void check.erase()}>
          {words('hearing').own.erase}
        </button>
      )}
    </section>
  );
}

function Teaching({ check }: Pick<Props, 'check'>) {
  const teaching = check.teaching.value;
  if (!teaching) return null;
  return (
    <div>
      <p class="saying">
        {words('hearing').lesson.say(teaching.word)} <span class="muted small">{words('hearing').lesson.takes(teaching.done, TAKES_A_WORD)}</span>
      </p>
      <output>{teaching.said}</output>
      <button type="button" onClick={check.stopTeaching}>
        {words('hearing').lesson.stop}
      </button>
    </div>
  );
}
