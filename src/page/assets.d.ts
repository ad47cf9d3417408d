declare module '*.yaml' {
  const text: string;
  export default text;
}

declare module '*.ttf' {
  const bytes: Uint8Array;
  export default bytes;
}
