// Every screen but the start and the sweep, each read when it is opened.
import { late } from './parts/late.tsx';
import type { Place } from './route.ts';

const AboutScreen = late(async () => (await import('./about/aboutScreen.tsx')).AboutScreen, 'about');
const BenchScreen = late(async () => (await import('./bench/benchScreen.tsx')).BenchScreen, 'bench', 'cautions', 'print', 'rig');
const BodyScreen = late(async () => (await import('./kit/bodyScreen.tsx')).BodyScreen, 'kit');
const ConverterScreen = late(async () => (await import('./kit/converterScreen.tsx')).ConverterScreen, 'kit');
const EnteringScreen = late(async () => (await import('./entering/enteringScreen.tsx')).EnteringScreen, 'entering', 'entered', 'conditions', 'kit');
const FilesScreen = late(async () => (await import('./files/filesScreen.tsx')).FilesScreen, 'files');
const HelpScreen = late(async () => (await import('./help/helpScreen.tsx')).HelpScreen, 'about', 'help', 'firstHold', 'sweep');
const KitScreen = late(async () => (await import('./kit/kitScreen.tsx')).KitScreen, 'kit');
const LensScreen = late(async () => (await import('./kit/lensScreen.tsx')).LensScreen, 'kit');
const LogbookScreen = late(async () => (await import('./logbook/logbookScreen.tsx')).LogbookScreen, 'logbook', 'lookUp');
const NextScreen = late(async () => (await import('./start/nextScreen.tsx')).NextScreen, 'start', 'told', 'logbook', 'plan');
const PhotographsScreen = late(async () => (await import('./photographs/photographsScreen.tsx')).PhotographsScreen, 'photographs', 'series', 'told');
const PlanScreen = late(async () => (await import('./plan/planScreen.tsx')).PlanScreen, 'plan');
const PracticeScreen = late(async () => (await import('./start/practiceScreen.tsx')).PracticeScreen, 'practice');
const PracticePicturesScreen = late(
  async () => (await import('./photographs/practicePicturesScreen.tsx')).PracticePicturesScreen,
  'practicePictures',
  'photographs',
  'series',
);
const RecordScreen = late(
  async () => (await import('./logbook/recordScreen.tsx')).RecordScreen,
  'record',
  'conditions',
  'kit',
  'readings',
  'result',
  'spoken',
  'sweep',
  'trouble',
);
const SettingsScreen = late(async () => (await import('./settings/settingsScreen.tsx')).SettingsScreen, 'about', 'settings', 'manner', 'sound');
const SituationScreen = late(
  async () => (await import('./logbook/situationScreen.tsx')).SituationScreen,
  'situation',
  'logbook',
  'entered',
  'conditions',
  'kit',
  'trouble',
);
const TrainingScreen = late(async () => (await import('./training/trainingScreen.tsx')).TrainingScreen, 'training', 'practice', 'firstHold');
const VoiceScreen = late(async () => (await import('./voice/voiceScreen.tsx')).VoiceScreen, 'voice', 'sound', 'logbook', 'sweep');
const WalkScreen = late(async () => (await import('./bench/walkScreen.tsx')).WalkScreen, 'setUp', 'bench', 'cautions', 'readings', 'firstHold', 'sweep');

export function Elsewhere({ place }: { readonly place: Place }) {
  switch (place.at) {
    case 'start':
    case 'sweep':
      return null;
    case 'logbook':
      return <LogbookScreen />;
    case 'record':
      return <RecordScreen id={place.id} />;
    case 'situation':
      return <SituationScreen id={place.id} byHand={place.byHand ?? false} />;
    case 'entering':
      return <EnteringScreen id={place.id} />;
    case 'next':
      return <NextScreen />;
    case 'practice':
      return <PracticeScreen />;
    case 'plan':
      return <PlanScreen />;
    case 'photographs':
      return <PhotographsScreen situation={place.situation} />;
    case 'practice pictures':
      return <PracticePicturesScreen of={place.of} />;
    case 'kit':
      return <KitScreen />;
    case 'body':
      return <BodyScreen id={place.id} />;
    case 'lens':
      return <LensScreen id={place.id} />;
    case 'converter':
      return <ConverterScreen id={place.id} />;
    case 'files':
      return <FilesScreen />;
    case 'settings':
      return <SettingsScreen />;
    case 'bench':
      return <BenchScreen />;
    case 'walk':
      return <WalkScreen />;
    case 'help':
      return <HelpScreen />;
    case 'about':
      return <AboutScreen />;
    case 'training':
      return <TrainingScreen />;
    case 'voice':
      return <VoiceScreen />;
  }
}
