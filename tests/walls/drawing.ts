// The table of the rooms as DEVELOPERS.md draws it.
import type { Rooms } from './faults.ts';

export const drawingOf = (rooms: Rooms): string =>
  [
    '| room | what is in it | may know |',
    '| --- | --- | --- |',
    ...Object.entries(rooms).map(([name, { holds, knows }]) => `| ${name} | ${folders(holds)} | ${knows.join(', ') || 'nothing'} |`),
  ].join('\n');

/** `src/sweep/{scale,verdict}.ts` for several files of one folder. */
function folders(holds: readonly string[]): string {
  const files = holds.filter((held) => held.endsWith('.ts'));
  const folder = holds[0]?.replace(/[^/]*$/, '') ?? '';
  if (files.length < 2) return holds.map((held) => `\`${held}\``).join(', ');
  return `\`${folder}{${files.map((file) => file.slice(folder.length, -'.ts'.length)).join(',')}}.ts\``;
}
