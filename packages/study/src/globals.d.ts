// The one class of the language's surroundings that this pure package needs; browsers and Node have it.
declare class TextEncoder {
  encode(text: string): Uint8Array<ArrayBuffer>;
}
