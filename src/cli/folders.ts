import { lstatSync, mkdirSync, rmdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';

/** Makes a folder and those above it that are missing, and notes them in `made`; one by one: on some file systems making them in one go never comes back. */
export function makeFolders(folder: string, made: string[]): void {
  if (isFolder(folder)) return;
  if (dirname(folder) !== folder) makeFolders(dirname(folder), made);
  try {
    mkdirSync(folder);
    made.push(folder);
  } catch (problem) {
    if (!isFolder(folder)) throw problem;
  }
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/** Removes a folder that holds nothing; one that holds something, or is gone, is left. */
export function removeIfEmpty(folder: string): boolean {
  try {
    rmdirSync(folder);
    return true;
  } catch {
    return false;
  }
}

/** Whether anything has that name: a file, a folder, a link to nowhere. */
export function isThere(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
}
