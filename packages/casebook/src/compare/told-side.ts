import type { SideRatio, UnderLine } from '@surae/analysis';

/** The leg that an answer is about: the one above the line, or the other one where that does less and no leg is the sore one. */
export function toldSide({ direction, underLine }: SideRatio): UnderLine {
  const [over, under] = underLine;
  return direction.why === 'left-over-right' && under.probability > over.probability ? under : over;
}
