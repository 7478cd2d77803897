import { css } from 'lit';

/** How the drawing of a foot is set: one weight of line, the floor line in the voice of the tool. */
export const footStyle = css`
  .range {
    margin: 0;
    max-inline-size: 22rem;
  }
  .range .picture {
    block-size: auto;
    direction: ltr;
    display: block;
    inline-size: 100%;
  }
  .range .picture :is(path, line) {
    fill: none;
    stroke: var(--ink);
    stroke-linecap: round;
    stroke-linejoin: round;
    stroke-width: 2.5;
  }
  .range .picture .high {
    stroke: var(--hairline);
    stroke-dasharray: 4 5;
  }
  .range .picture .floor-line {
    stroke: var(--voice);
    stroke-dasharray: 9 5;
    stroke-width: 3;
  }
  .range .picture text {
    fill: var(--voice);
    font-size: 14px;
  }
`;
