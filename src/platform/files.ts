// Files the person chooses and files the panel writes. Nothing else of the disk is ever touched.
import { failed, got, type Result } from '../result.ts';

/** Hands the browser a file to save where it saves downloads. */
export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const UNREAD = 'This file cannot be read: see that it is still there, then choose it again.';

export async function readText(file: File): Promise<Result<string>> {
  try {
    return got(await file.text());
  } catch {
    return failed(UNREAD);
  }
}

/** The first bytes of a file, however large it is. */
export async function readStart(file: File, bytes: number): Promise<Result<Uint8Array>> {
  try {
    return got(new Uint8Array(await file.slice(0, bytes).arrayBuffer()));
  } catch {
    return failed(UNREAD);
  }
}
