// The practice camera: how it is to be, and off it goes.
import { Heading } from '../parts/heading.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Practise } from './practise.tsx';

export function PracticeScreen() {
  const { way } = useSurroundings();
  return (
    <>
      <Heading onBack={() => way.back()}>{words('practice').title}</Heading>
      <Practise />
    </>
  );
}
