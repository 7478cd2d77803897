import { css } from 'lit';

/** How a rule is set: its sentence first, and folded under it what it is made of. */
export const ruleStyle = css`
  details {
    border-block-end: 1px solid var(--hairline);
  }
  summary {
    cursor: pointer;
    max-inline-size: var(--line);
    min-block-size: var(--target);
    padding-block: var(--gap-3);
  }
  .own {
    display: block;
    font-weight: 600;
  }
  .inside {
    padding-block: var(--gap-1) var(--gap-6);
  }
  h3 {
    font-size: var(--size-1);
    margin-block: var(--gap-4) var(--gap-1);
  }
  ul {
    margin: 0 0 var(--gap-2);
    max-inline-size: var(--line);
    padding-inline-start: 1.2em;
  }
  li {
    overflow-wrap: anywhere;
  }
  p {
    margin-block: 0 var(--gap-1);
    overflow-wrap: anywhere;
  }
  .number {
    border-inline-start: 1px solid var(--hairline);
    margin-block-end: var(--gap-4);
    padding-inline-start: var(--gap-3);
  }
  .name {
    font-weight: 600;
  }
  .edit {
    display: grid;
    gap: var(--gap-3);
    grid-template-columns: minmax(0, 1fr);
    margin-block: var(--gap-3);
    max-inline-size: 44rem;
  }
  .presses {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-2);
  }
`;
