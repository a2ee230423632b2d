// Before a value goes into a body: which lens it will not keep apart from this one, and whether it has room for one more.
import { useMemo } from 'preact/hooks';
import { warningsFor, warningsOf } from '../../kit/warnings.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

export function BodyWarnings({ situation: id }: { readonly situation: string }) {
  const session = useSession();
  const [kit, entries] = [session.kit.value, session.entries.value];
  const warnings = useMemo(() => {
    const situation = kit.situations.find((one) => one.id === id);
    const entered = new Set(entries.map(({ subject }) => subject.situation));
    return situation ? warningsFor(situation, warningsOf(kit, entered)) : [];
  }, [kit, entries, id]);
  return (
    <>
      {warnings.map(words('kit').warning).map((sentence) => (
        <p key={sentence} class="notice small">
          {sentence}
        </p>
      ))}
    </>
  );
}
