// The kit: bodies, lenses and converters, with what a body cannot keep apart or will soon not keep at all.
import { useMemo } from 'preact/hooks';
import { warningsOf } from '../../kit/warnings.ts';
import { words } from '../../words/catalogue.ts';
import { Empty } from '../empty/empty.ts';
import { Heading } from '../parts/heading.tsx';
import type { KitPlace } from '../route.ts';
import { useSurroundings } from '../useSession.ts';
import { FromPhotograph } from './fromPhotograph.tsx';

interface Named {
  readonly id: string;
  readonly name: string;
  readonly serial?: string | null;
  readonly retired: number | null;
}

export function KitScreen() {
  const say = words('kit');
  const { session, way } = useSurroundings();
  const kit = session.kit.value;
  const entries = session.entries.value;
  const warnings = useMemo(() => warningsOf(kit, new Set(entries.map(({ subject }) => subject.situation))), [kit, entries]);
  const isEmpty = [kit.bodies, kit.lenses, kit.converters].every(({ length }) => length === 0);
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {warnings.map(say.warning).map((sentence) => (
        <p key={sentence} class="notice small">
          {sentence}
        </p>
      ))}
      {isEmpty ? (
        <>
          <Empty of="kit" onBegin={() => way.go({ at: 'body', id: '' })} />
          <div class="row">
            <Add at="lens" />
            <Add at="converter" />
          </div>
        </>
      ) : (
        <>
          <List at="body" items={kit.bodies} />
          <List at="lens" items={kit.lenses} />
          <List at="converter" items={kit.converters} />
        </>
      )}
      <FromPhotograph />
    </>
  );
}

interface ListProps {
  readonly at: KitPlace;
  readonly items: readonly Named[];
}

function List({ at, items }: ListProps) {
  const say = words('kit');
  const { title } = say.lists[at];
  const { way } = useSurroundings();
  const row = ({ id, name, serial }: Named) => (
    <li key={id}>
      <button type="button" class="wide" onClick={() => way.go({ at, id })}>
        <b>{name}</b>
        {serial && <small class="muted"> {serial}</small>}
      </button>
    </li>
  );
  const inUse = items.filter((item) => item.retired === null);
  const retired = items.filter((item) => item.retired !== null);
  return (
    <section class="stack list" aria-label={title}>
      <h2>{title}</h2>
      {inUse.length > 0 ? <ul class="plain kit">{inUse.map(row)}</ul> : <p class="muted">{say.none}</p>}
      {retired.length > 0 && (
        <details>
          <summary>{say.retired(retired.length)}</summary>
          <ul class="plain kit">{retired.map(row)}</ul>
        </details>
      )}
      <Add at={at} />
    </section>
  );
}

function Add({ at }: { readonly at: KitPlace }) {
  const { way } = useSurroundings();
  return (
    <button type="button" class="grow" onClick={() => way.go({ at, id: '' })}>
      {words('kit').lists[at].add}
    </button>
  );
}
