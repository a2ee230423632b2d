// How carefully, and in which order. What each costs is a figure from simulated sweeps on a scale of 41 values.
import { Pick, type Option } from '../parts/pick.tsx';
import { useSession } from '../useSession.ts';
import type { Care } from '../../sweep/care.ts';
import type { Order } from '../../sweep/manner.ts';

export function MannerPick() {
  const session = useSession();
  const { care, order } = session.settings.value.manner;
  return (
    <>
      <Pick legend="Care" options={CARES} chosen={care} onChoose={(chosen) => session.changeSettings({ manner: { care: chosen } })} />
      <Pick
        legend="Way of working"
        options={ORDERS}
        chosen={order}
        onChoose={(chosen) => session.changeSettings({ manner: { order: chosen } })}
      />
    </>
  );
}

const CARES: readonly Option<Care>[] = [
  { value: 'quick', label: 'Quick', note: 'Ends when the centre is sure to within one step. About 9 holds, a minute and a half.' },
  { value: 'standard', label: 'Standard', note: 'Both ends of the band are seen as well. About 10 holds, under two minutes.' },
  {
    value: 'thorough',
    label: 'Thorough',
    note: 'The values at both ends are held again until they are believed. About 13 holds, two minutes.',
  },
];

const ORDERS: readonly Option<Order>[] = [
  { value: 'fewest', label: 'Fewest holds', note: 'Each value is the one that tells most for your time.' },
  { value: 'outward', label: 'Step by step', note: 'One value at a time outward, to watch the light change. Takes more holds.' },
];
