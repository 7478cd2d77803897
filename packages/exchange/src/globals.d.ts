// The two classes of the language's surroundings that this pure package needs; browsers and Node have both.
declare class TextEncoder {
  encode(text: string): Uint8Array<ArrayBuffer>;
}
declare class TextDecoder {
  constructor(label: 'utf-8', options: { readonly fatal: boolean; readonly ignoreBOM: boolean });
  decode(bytes: Uint8Array): string;
}
