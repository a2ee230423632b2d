// A zip file whose bytes follow from what is in it and from nothing else: names in the order of their letters, one date for all of them,
// and packed by a library in plain JavaScript, as what Node itself packs with differs between its versions.
import JSZip from 'jszip';

export interface Packed {
  /** With slashes, as it is unpacked. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** May it be run as a program? */
  readonly runs: boolean;
}

/** The first day that a zip file can name. */
const DATE = new Date(Date.UTC(1980, 0, 1));

export function zipOf(files: readonly Packed[]): Promise<Uint8Array> {
  const zip = new JSZip();
  const inOrder = files.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  for (const { name, bytes, runs } of inOrder) zip.file(name, bytes, { date: DATE, createFolders: false, unixPermissions: runs ? 0o100_755 : 0o100_644 });
  return zip.generateAsync({ type: 'uint8array', compression: 'DEFLATE', compressionOptions: { level: 9 }, platform: 'UNIX' });
}
