/** Whether a file's name leads out of the folder it is looked for in: from the root, a drive, a home, or by going up. */
export function leadsOutside(name: string): boolean {
  return /^(?:[/\\~]|[A-Za-z]:)/u.test(name) || name.split(/[/\\]/u).includes('..');
}
