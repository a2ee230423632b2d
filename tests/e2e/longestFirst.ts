// The files that take longest begin first, on a computer too that has never run them: else one of them would be left over in the end.
import { basename } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** A minute and more, the longest first. */
const LONG = ['powerCut', 'killed', 'firstHold', 'photographsInSeries', 'recogniser', 'oneSwitch', 'languagesInRooms', 'languages', 'accessibility', 'heights'];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = LONG.indexOf(basename(moduleId, '.test.ts'));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).toSorted((a, b) => place(a) - place(b));
  }
}
