// How carefully, and in which order.
import { Pick } from '../parts/pick.tsx';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';

export const MannerPick = () => (
  <>
    <CarePick />
    <OrderPick />
  </>
);

export function CarePick() {
  const session = useSession();
  const say = words('manner');
  return (
    <Pick
      legend={say.care}
      options={CARES.map((value) => ({ value, ...say.cares[value] }))}
      chosen={session.settings.value.manner.care}
      onChoose={(chosen) => session.changeSettings({ manner: { care: chosen } })}
    />
  );
}

export function OrderPick() {
  const session = useSession();
  const say = words('manner');
  return (
    <Pick
      legend={say.order}
      options={ORDERS.map((value) => ({ value, ...say.orders[value] }))}
      chosen={session.settings.value.manner.order}
      onChoose={(chosen) => session.changeSettings({ manner: { order: chosen } })}
    />
  );
}

const CARES = ['quick', 'standard', 'thorough'] as const;
const ORDERS = ['fewest', 'outward'] as const;
