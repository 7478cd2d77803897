import { css } from 'lit';

/** A picture on paper: no box around it, its cursor a line of ink. */
export const chartStyle = css`
  figure {
    margin: 0;
  }
  .plot {
    block-size: var(--chart-height, 18rem);
    inline-size: 100%;
    overflow: hidden;
  }
  .live .plot {
    block-size: var(--chart-height, 6rem);
  }
  .stage {
    touch-action: pan-y;
  }
  .u-hz .u-cursor-x {
    border-inline-end: 2px solid var(--voice);
  }
  figcaption {
    line-height: 1.3;
    min-block-size: 2.6em;
  }
  .key {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-1) var(--gap-6);
    list-style: none;
    margin: 0 0 var(--gap-2);
    padding: 0;
  }
  .ink-ink {
    color: var(--ink);
  }
  .ink-quiet-ink {
    color: var(--ink-quiet);
  }
  .ink-hairline {
    color: var(--hairline);
  }
  .ink-left {
    color: var(--left);
  }
  .ink-right {
    color: var(--right);
  }
  .scroll {
    overflow-x: auto;
  }
  table {
    border-collapse: collapse;
  }
  th,
  td {
    border-block-end: 1px solid var(--hairline);
    font-weight: 400;
    padding: var(--gap-1) var(--gap-4) var(--gap-1) 0;
    text-align: start;
    white-space: nowrap;
  }
  thead th {
    font-weight: 600;
    white-space: normal;
  }
`;
