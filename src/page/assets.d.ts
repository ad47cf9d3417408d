declare module '*.yaml' {
  const text: string;
  export default text;
}

declare module '*.ttf' {
  const bytes: Uint8Array;
  export default bytes;
}

declare module '*.svg' {
  /** The picture as a data: address. */
  const address: string;
  export default address;
}
