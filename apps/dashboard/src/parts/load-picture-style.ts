import { css } from 'lit';

/** What the pictures of load have beside those of legs: bars, days that are not known, what was planned, and signs. */
export const loadPictureStyle = css`
  .picture .bar {
    fill: var(--leg);
  }
  .picture .bar.left {
    fill-opacity: 0.45;
    stroke: var(--leg);
    stroke-width: 1;
  }
  .picture .bar.pale {
    fill-opacity: 0.2;
    stroke: none;
  }
  .picture .unknown {
    fill: none;
    stroke: var(--ink-quiet);
    stroke-opacity: 0.45;
    stroke-width: 1;
  }
  .picture .planned {
    stroke: var(--voice);
    stroke-width: 1.5;
  }
  .picture .sign {
    fill: var(--voice);
    font-weight: 600;
  }
`;
