/** What tests use of node-ebml, which tells no types. */
declare module 'ebml' {
  interface Element {
    readonly name: string;
    /** A number, a text, bytes; of a block the time within its cluster. */
    readonly value?: number | string;
    readonly data?: Uint8Array;
    /** Of a block. */
    readonly track?: number;
    readonly payload?: Uint8Array;
  }
  export class Decoder {
    on(event: 'data', hear: (chunk: readonly ['start' | 'tag' | 'end', Element]) => void): void;
    write(bytes: Uint8Array): void;
  }
}
