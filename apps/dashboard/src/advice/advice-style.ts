import { css } from 'lit';

/** How proposals are set: two columns where there is room, one rule above each leg, and no box that looks decided. */
export const adviceStyle = css`
  section {
    margin-block: var(--gap-6);
  }
  h2 {
    font-size: var(--size-2);
  }
  /* the left leg stays on the left in every language */
  .cards {
    direction: ltr;
    display: grid;
    gap: var(--gap-6) var(--gap-8);
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr));
  }
  article {
    border-block-start: 1px dashed var(--ink-quiet);
    direction: var(--reading);
    min-inline-size: 0;
    padding-block-start: var(--gap-3);
  }
  h3 {
    font-size: var(--size-2);
  }
  ul {
    margin: 0 0 var(--gap-4);
    padding-inline-start: 1.2em;
  }
  .what {
    font-size: var(--size-2);
  }
  .sure,
  .answer {
    border-inline-start: 4px solid var(--ink);
    padding-inline-start: var(--gap-2);
  }
  .sure[data-standing='waits'] {
    border-inline-start-style: dotted;
  }
  .means {
    font-weight: 600;
    margin-block: var(--gap-4) var(--gap-1);
  }
  .take {
    margin-block-end: var(--gap-4);
  }
  .reason {
    font-size: var(--size-1);
    text-align: start;
  }
  .choices {
    margin-block-end: var(--gap-6);
  }
  .why,
  .options {
    margin-block-start: var(--gap-4);
  }
  .option {
    border-block-start: 1px solid var(--hairline);
    padding-block: var(--gap-3);
  }
  .option p {
    margin-block-end: var(--gap-1);
  }
  dl {
    margin: 0;
    max-inline-size: var(--line);
  }
  dt {
    font-weight: 600;
    margin-block-start: var(--gap-3);
  }
  dd {
    margin: 0 0 var(--gap-1);
    overflow-wrap: anywhere;
  }
`;
