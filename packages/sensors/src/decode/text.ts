/** Text in UTF-8 up to the first zero byte; what is no UTF-8 becomes the sign for it (U+FFFD). */
export function textOf(bytes: Uint8Array): string {
  const end = bytes.indexOf(0);
  return new TextDecoder().decode(end < 0 ? bytes : bytes.subarray(0, end));
}
