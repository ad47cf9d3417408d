/** Names told apart, on disks that take small and large letters for the same too: the second `a` is `a-2`. */
export function unlikeNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let own = name;
    for (let count = 2; taken.has(own.toLowerCase()); count++) own = `${name}-${count}`;
    taken.add(own.toLowerCase());
    return own;
  });
}
