// What a value rests on: whether its sweeps agree, the course of it, and everything that was measured, entered and photographed.
import { estimateOf, sweepsDiffer } from '../../logbook/combined.ts';
import type { History } from '../../logbook/history.ts';
import { words } from '../../words/catalogue.ts';
import { ScreenRoom } from '../parts/room.tsx';
import { HistoryChart } from './historyChart.tsx';
import { HistoryLines } from './historyLines.tsx';
import { Repeated } from './repeated.tsx';

export function EvidenceRoom({ history }: { readonly history: History }) {
  const { rooms, repeated } = words('situation');
  const differ = sweepsDiffer(history.measured.flatMap((one) => estimateOf(one) ?? [])) !== null;
  return (
    <ScreenRoom title={rooms.evidence} state={differ ? repeated.differ : rooms.kept(history)}>
      <HistoryChart history={history} />
      <Repeated measured={history.measured} />
      <HistoryLines history={history} />
    </ScreenRoom>
  );
}
