/** Hands a file to the browser to be stored as a download. */
export function save(name: string, content: string | Uint8Array, mime: string): void {
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type: mime }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
