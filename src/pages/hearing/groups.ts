// The groups of words to teach, with the names of the person's own lenses as the last.
import { contentsOf } from '../../logbook/stored.ts';
import { store } from '../../platform/storage.ts';
import { wordGroupsIn, type GroupName, type WordGroup } from '../../voice/wordGroups.ts';
import { vocabulary } from '../../words/taught.ts';

/** A name longer than this is no word to teach. */
const LONGEST = 80;

export type TaughtGroup = WordGroup<GroupName | 'lenses'>;

export async function groupsToTeach(): Promise<readonly TaughtGroup[]> {
  const groups = wordGroupsIn(vocabulary());
  const read = await store.read();
  if (!read.ok) return groups;
  const { lenses } = contentsOf(read.value).contents.kit;
  const names = lenses.flatMap(({ name, retired }) => (retired === null && name.length <= LONGEST ? [name] : []));
  return names.length === 0 ? groups : [...groups, { is: 'lenses', words: [...new Set(names)] }];
}
