// Files the person chooses and files the panel writes. Nothing else of the disk is ever touched.
import { failed, got, type Result } from '../result.ts';

/** Hands the browser a file, told in pieces of its text, to save where it saves downloads. */
export function saveFile(name: string, type: string, pieces: readonly string[]): void {
  const address = URL.createObjectURL(new Blob([...pieces], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** It may have been moved or taken away since it was chosen. */
export type FileFault = 'file unread';

export async function readText(file: File): Promise<Result<string, FileFault>> {
  try {
    return got(await file.text());
  } catch {
    return failed('file unread');
  }
}

/** The first bytes of a file, however large it is. */
export async function readStart(file: File, bytes: number): Promise<Result<Uint8Array, FileFault>> {
  try {
    return got(new Uint8Array(await file.slice(0, bytes).arrayBuffer()));
  } catch {
    return failed('file unread');
  }
}
