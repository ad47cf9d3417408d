import { at } from '../base/at';

/** The text of a job file, or why it is none. */
export type Decoded =
  { readonly text: string; readonly problem: null } | { readonly text: null; readonly problem: string };

/**
 * A job file's bytes → its text in UTF-8. Bytes that are none are refused with the line and the place in it, counted from 1.
 * `cut`: whether the bytes end where they were cut off, maybe inside a character.
 */
export function decodeJob(bytes: Uint8Array, cut = false): Decoded {
  const start = bytes.subarray(0, 2).join();
  if (start === '255,254' || start === '254,255')
    return { text: null, problem: 'this is text in UTF-16; save it as UTF-8' };
  try {
    return { text: decode(bytes, cut), problem: null };
  } catch {
    return { text: null, problem: whereBroken(bytes) };
  }
}

function decode(bytes: Uint8Array, cut: boolean): string {
  return new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: cut });
}

function whereBroken(bytes: Uint8Array): string {
  // The longest beginning that is text, by halving.
  let [good, bad] = [0, bytes.length];
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (isText(bytes.subarray(0, middle))) good = middle;
    else bad = middle;
  }
  const before = decode(bytes.subarray(0, good), true);
  const line = before.split('\n').length;
  const place = [...before.slice(before.lastIndexOf('\n') + 1)].length + 1;
  const byte = at(bytes, good).toString(16).toUpperCase().padStart(2, '0');
  return `line ${line}, character ${place}: this is not text in UTF-8 (a byte ${byte} stands there); save it as UTF-8, or check that it is the right file`;
}

function isText(bytes: Uint8Array): boolean {
  try {
    decode(bytes, true);
    return true;
  } catch {
    return false;
  }
}
