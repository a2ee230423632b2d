// The practice camera: how it is to be, and off it goes.
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { Practise } from './practise.tsx';
import { START } from './words.ts';

export function PracticeScreen() {
  const { way } = useSurroundings();
  return (
    <>
      <Heading onBack={() => way.back()}>{START.practice}</Heading>
      <Practise />
    </>
  );
}
