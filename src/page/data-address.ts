/** The text that a data: address carries, as the bundler writes a picture. */
export function textOfAddress(address: string): string {
  const [head = '', ...body] = address.split(',');
  const said = body.join(',');
  if (!head.endsWith(';base64')) return decodeURIComponent(said);
  const bytes = Uint8Array.from(atob(said), (letter) => letter.charCodeAt(0));
  return new TextDecoder().decode(bytes);
}
