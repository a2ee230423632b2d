// A table comes in: which heading means what is shown and may be changed, every fault is told with its line, and nothing is
// taken before that was seen.
import { useMemo, useState } from 'preact/hooks';
import { ALSO_READ, COLUMNS } from '../../logbook/csv/columns.ts';
import { planTable } from '../../logbook/csv/planTable.ts';
import { guessMapping, missingFrom, readRows, readTable, type Mapping, type Table } from '../../logbook/csv/readTable.ts';
import { readText } from '../../platform/files.ts';
import { useLibrary } from '../logbook/useShelf.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Choose } from '../parts/choose.tsx';
import { useSession } from '../useSession.ts';

const PASSED_OVER = '';
const MEANINGS = [...COLUMNS, ...ALSO_READ];
const OPTIONS = [{ value: PASSED_OVER, label: 'passed over' }, ...MEANINGS.map(({ heading }) => ({ value: heading, label: heading }))];
const MOST_SHOWN = 50;

interface Chosen {
  readonly table: Table;
  readonly mapping: Mapping;
}

export function TableIn() {
  const session = useSession();
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [said, setSaid] = useState('');
  const look = async (file: File): Promise<void> => {
    const text = await readText(file);
    const table = text.ok ? readTable(text.value) : text;
    setSaid(table.ok ? '' : table.sentence);
    setChosen(table.ok ? { table: table.value, mapping: guessMapping(table.value.headings) } : null);
  };
  const bring = async (library: Parameters<typeof session.bring>[0]): Promise<void> => {
    const brought = await session.bring(library, 'merge');
    setSaid(brought.ok ? 'The table is in the logbook.' : brought.sentence);
    setChosen(null);
  };
  return (
    <>
      <ChooseFile label="Bring a table in" accept="text/csv,.csv,.tsv,.txt" onFile={(file) => void look(file)} />
      {said && <p role="alert">{said}</p>}
      {chosen && <Plan {...chosen} onMapped={(mapping) => setChosen({ ...chosen, mapping })} onBring={(library) => void bring(library)} />}
    </>
  );
}

interface PlanProps extends Chosen {
  readonly onMapped: (mapping: Mapping) => void;
  readonly onBring: (library: ReturnType<typeof planTable>['library']) => void;
}

function Plan({ table, mapping, onMapped, onBring }: PlanProps) {
  const session = useSession();
  const library = useLibrary();
  const plan = useMemo(() => planTable(library, readRows(table, mapping), session.clock()), [library, session, table, mapping]);
  const missing = missingFrom(mapping);
  const mapped = (index: number, heading: string): Mapping =>
    mapping.map((column, at) => (at === index ? (MEANINGS.find((one) => one.heading === heading) ?? null) : column));
  return (
    <div class="stack">
      <p>What each heading means:</p>
      {table.headings.map((heading, index) => (
        <Choose
          key={index}
          label={heading || `Column ${index + 1}`}
          options={OPTIONS}
          chosen={mapping[index]?.heading ?? PASSED_OVER}
          onChoose={(value) => onMapped(mapped(index, value))}
        />
      ))}
      {missing.length > 0 && <p class="fault">Say which heading means: {missing.map(({ heading }) => heading).join(', ')}.</p>}
      <p>
        {plan.added} new, {plan.same} already here, {plan.withoutValue} without a value, {plan.faults.length} with a fault.
        {plan.newKit.length > 0 && ` New in the kit: ${plan.newKit.join(', ')}.`} Nothing is changed yet.
      </p>
      {plan.faults.length > 0 && (
        <ul>
          {plan.faults.slice(0, MOST_SHOWN).map(({ line, sentence }) => (
            <li key={line}>{sentence}</li>
          ))}
          {plan.faults.length > MOST_SHOWN && <li>and {plan.faults.length - MOST_SHOWN} more</li>}
        </ul>
      )}
      <button type="button" class="chief" disabled={plan.added === 0} onClick={() => onBring(plan.library)}>
        Take in what fits
      </button>
    </div>
  );
}
