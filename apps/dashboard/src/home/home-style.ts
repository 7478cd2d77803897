import { css } from 'lit';

/** How the drawings of the pages at home are set; the voice of the tool marks the line that is not passed. */
export const homePictureStyle = css`
  .drawing {
    margin: 0;
    max-inline-size: 24rem;
  }
  .drawing .picture {
    block-size: auto;
    direction: ltr;
    display: block;
    inline-size: 100%;
  }
  .drawing text {
    fill: var(--ink);
    font-size: 14px;
  }
  .drawing .word {
    font-weight: 600;
  }
  .drawing .allowed {
    fill: var(--ink);
  }
  .drawing .above {
    stroke: var(--ink-quiet);
    stroke-dasharray: 4 6;
    stroke-width: 3;
  }
  .drawing .edge-of {
    stroke: var(--voice);
    stroke-width: 3;
  }
  .drawing .part {
    fill: none;
    stroke: var(--ink);
    stroke-width: 8;
  }
  .drawing .part.top {
    stroke: var(--ink-quiet);
    stroke-dasharray: 3 3;
  }
  .drawing .part.down {
    stroke-width: 3;
  }
  .drawing .pace-mark {
    fill: var(--voice);
    stroke: var(--paper);
    stroke-width: 2;
  }
`;
