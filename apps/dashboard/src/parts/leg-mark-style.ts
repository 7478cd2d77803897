import { css } from 'lit';

/** The mark of a leg on an axis: an open ring left, a filled lozenge right, each over an interval that fades at its ends. */
export const legMarkStyle = css`
  .left {
    --leg: var(--left);
  }
  .right {
    --leg: var(--right);
  }
  stop {
    stop-color: var(--leg);
  }
  .interval {
    stroke-width: 4;
  }
  .right .interval {
    stroke-dasharray: 7 4;
  }
  .left .mark {
    fill: var(--paper);
    stroke: var(--leg);
    stroke-width: 3.5;
  }
  .right .mark {
    fill: var(--leg);
  }
`;
