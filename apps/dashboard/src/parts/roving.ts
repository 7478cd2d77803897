/** The place among choices that a key leads to, as in a group of radio buttons; undefined for any other key. */
export function roved(key: string, at: number, count: number): number | undefined {
  if (count < 1) return undefined;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return (at + 1) % count;
    case 'ArrowLeft':
    case 'ArrowUp':
      return (at + count - 1) % count;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return undefined;
  }
}
