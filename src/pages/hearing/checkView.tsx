// The hearing check as it is seen: the meter with its advice, what was heard, and every word that can be taught, in groups
// that each say what they are for.
import type { Take } from '../../voice/ownWords/take.ts';
import type { TaughtGroup } from './groups.ts';
import { hearingWords as say } from '../../words/pages.ts';
import type { Check } from './check.ts';
import { TAKES_A_WORD } from './lesson.ts';

interface Props {
  readonly check: Check;
  readonly groups: readonly TaughtGroup[];
}

export function CheckView({ check, groups }: Props) {
  return (
    <>
      <h1>{say.title}</h1>
      <p>{say.kept}</p>
      <Room check={check} />
      <Words check={check} groups={groups} />
    </>
  );
}

function Room({ check }: Pick<Props, 'check'>) {
  const level = check.level.value;
  return (
    <section aria-labelledby="room">
      <h2 id="room">{say.room.title}</h2>
      {check.listens.value ? (
        <label>
          {say.room.level}
          <meter min={-90} max={0} low={-60} high={-3} value={level} />
        </label>
      ) : (
        <button type="button" class="chief" onClick={() => void check.listen()}>
          {say.room.listen}
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
  const taught = new Set(takes.map(({ word }) => word));
  const next = groups.find(({ words }) => words.some((word) => !taught.has(word)));
  return (
    <section aria-labelledby="words">
      <h2 id="words">{say.own.title}</h2>
      <p>{say.own.about(TAKES_A_WORD).join(' ')}</p>
      {groups.map((group) => (
        <Group key={group.is} group={group} check={check} takes={takes} isNext={group === next} />
      ))}
      {takes.some((take) => take.learned) && (
        <button type="button" onClick={() => void check.forgetLearned()}>
          {say.own.forgetLearned}
        </button>
      )}
      {takes.length > 0 && (
        <button type="button" onClick={() => void check.erase()}>
          {say.own.erase}
        </button>
      )}
    </section>
  );
}

interface GroupProps extends Pick<Props, 'check'> {
  readonly group: TaughtGroup;
  readonly takes: readonly Take[];
  /** The first that is not wholly taught. */
  readonly isNext: boolean;
}

function Group({ group: { is, words }, check, takes, isNext }: GroupProps) {
  const taught = new Set(takes.map(({ word }) => word));
  const left = words.filter((word) => !taught.has(word));
  const stateOf = (word: string): string => {
    if (!taught.has(word)) return say.own.is.notTaught;
    const more = takes.filter((take) => take.learned && take.word === word).length;
    return more > 0 ? say.own.is.learned(more) : say.own.is.taught;
  };
  return (
    <div class="group">
      <h3>{say.own.groups[is].name}</h3>
      <p class="muted small">{say.own.groups[is].for}</p>
      {check.listens.value && !check.teaching.value && left.length > 1 && (
        <button type="button" class={isNext ? 'chief' : undefined} onClick={() => check.teach(left)}>
          {say.own.group(left.length, words.length)}
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
              aria-label={taught.has(word) ? say.own.again(word) : say.own.teach(word)}
              onClick={() => check.teach([word])}
            >
              {taught.has(word) ? say.own.short.again : say.own.short.teach}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function Teaching({ check }: Pick<Props, 'check'>) {
  const teaching = check.teaching.value;
  if (!teaching) return null;
  return (
    <div>
      <p class="saying">
        {say.lesson.say(teaching.word)} <span class="muted small">{say.lesson.takes(teaching.done, TAKES_A_WORD)}</span>
      </p>
      <output>{teaching.said}</output>
      <button type="button" onClick={check.stopTeaching}>
        {say.lesson.stop}
      </button>
    </div>
  );
}
