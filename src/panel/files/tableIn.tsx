// A table comes in: which heading means what is shown and may be changed, every fault is told with its line, and nothing is
// taken before that was seen.
import { useMemo, useState } from 'preact/hooks';
import { ALSO_READ, COLUMNS } from '../../logbook/csv/columns.ts';
import { planTable } from '../../logbook/csv/planTable.ts';
import { guessMapping, missingFrom, readRows, readTable, type Mapping, type Table } from '../../logbook/csv/readTable.ts';
import { readText } from '../../platform/files.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { useLibrary } from '../logbook/useShelf.ts';
import { ChooseFile } from '../parts/chooseFile.tsx';
import { Choose } from '../parts/choose.tsx';
import { useSession } from '../useSession.ts';

const PASSED_OVER = '';
const MEANINGS = [...COLUMNS, ...ALSO_READ];
const MOST_SHOWN = 50;

interface Chosen {
  readonly table: Table;
  readonly mapping: Mapping;
}

export function TableIn() {
  const { table: say, unread } = words('files');
  const session = useSession();
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [said, setSaid] = useState('');
  const look = async (file: File): Promise<void> => {
    const text = await readText(file);
    const table = text.ok ? readTable(text.value) : null;
    setSaid(!table ? unread : table.ok ? '' : say.fault(table.fault));
    setChosen(table?.ok ? { table: table.value, mapping: guessMapping(table.value.headings) } : null);
  };
  const bring = async (library: Parameters<typeof session.bring>[0]): Promise<void> => {
    const brought = await session.bring(library, 'merge');
    setSaid(brought.ok ? say.done : brought.fault);
    setChosen(null);
  };
  return (
    <>
      <ChooseFile label={say.choose} hint={words('files').drop} accept="text/csv,.csv,.tsv,.txt" onFile={(file) => void look(file)} />
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
  const { table: say } = words('files');
  const session = useSession();
  const library = useLibrary();
  const plan = useMemo(() => planTable(library, readRows(table, mapping), session.clock()), [library, session, table, mapping]);
  const missing = missingFrom(mapping);
  const options = [{ value: PASSED_OVER, label: say.passedOver }, ...MEANINGS.map((column) => ({ value: column.heading, label: say.meaning(column) }))];
  const headingOf = (key: string | null): string | null => table.headings[mapping.findIndex((column) => column?.key === key)] ?? null;
  const mapped = (index: number, heading: string): Mapping =>
    mapping.map((column, at) => (at === index ? (MEANINGS.find((one) => one.heading === heading) ?? null) : column));
  return (
    <div class="stack">
      {missing.length > 0 && <p class="fault">{say.missing(missing.map(say.meaning))}</p>}
      <details>
        <summary>{say.meanings}</summary>
        <div class="stack">
          {table.headings.map((heading, index) => (
            <Choose
              key={index}
              label={heading || say.column(index + 1)}
              options={options}
              chosen={mapping[index]?.heading ?? PASSED_OVER}
              onChoose={(value) => onMapped(mapped(index, value))}
            />
          ))}
        </div>
      </details>
      <p>{run(say.plan(plan))}</p>
      {plan.faults.length > 0 && (
        <ul>
          {plan.faults.slice(0, MOST_SHOWN).map((fault) => (
            <li key={fault.line}>{say.line(fault, headingOf(fault.column))}</li>
          ))}
          {plan.faults.length > MOST_SHOWN && <li>{say.more(plan.faults.length - MOST_SHOWN)}</li>}
        </ul>
      )}
      <button type="button" class="chief" disabled={plan.added === 0} onClick={() => onBring(plan.library)}>
        {say.bring}
      </button>
    </div>
  );
}
