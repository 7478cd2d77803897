// The classes of the language's surroundings that this pure package needs; browsers and Node have them.
declare class TextDecoder {
  decode(input: Uint8Array): string;
}
declare class TextEncoder {
  encode(text: string): Uint8Array<ArrayBuffer>;
}
