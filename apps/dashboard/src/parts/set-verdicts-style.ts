import { css } from 'lit';

/** A row of marks, each a target of its own, and below it the one that is looked at. */
export const setVerdictsStyle = css`
  .legend {
    font-weight: 600;
    margin-block: var(--gap-4) var(--gap-2);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-1);
  }
  .mark {
    border: 0;
    border-block-end: 1.5px solid var(--ink);
    border-radius: 0;
    display: grid;
    gap: 0;
    grid-template-columns: auto auto;
    justify-items: center;
    padding: var(--gap-1);
  }
  .mark[aria-expanded='true'] {
    outline: 2px solid var(--ink);
  }
  .number {
    color: var(--ink-quiet);
    font-size: var(--size-1);
    grid-column: 1 / -1;
    line-height: 1;
  }
  .mark > svg:first-child {
    grid-column: 1 / -1;
  }
  .ended {
    border-inline-start: 3px double var(--ink-quiet);
  }
  svg {
    block-size: 1.5rem;
    fill: none;
    inline-size: 1rem;
    stroke: var(--ink);
    stroke-linecap: round;
    stroke-width: 2.5;
  }
  .voice {
    stroke: var(--voice);
  }
  /* what was measured, struck through beside what a person saw */
  .before svg {
    block-size: 1rem;
    inline-size: 0.7rem;
    opacity: 0.75;
  }
  .before {
    background: linear-gradient(to top left, transparent 46%, var(--ink-quiet) 46% 54%, transparent 54%);
  }
  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--gap-4);
    margin-block: var(--gap-2) 0;
  }
  .key span {
    align-items: center;
    display: inline-flex;
    gap: var(--gap-1);
  }
  .both {
    margin-block: var(--gap-2) 0;
  }
  .panel {
    border-block: 1px solid var(--ink);
    display: grid;
    gap: var(--gap-3);
    justify-items: start;
    margin-block-start: var(--gap-4);
    padding-block: var(--gap-4);
  }
  .panel p {
    margin: 0;
  }
  .panel button {
    font-size: var(--size-1);
  }
  .panel .group {
    margin-block-end: var(--gap-2);
  }
`;
