import { css } from 'lit';

/** How what is proposed for activity is set, beside what `advice-style` sets. */
export const activityStyle = css`
  h4 {
    font-size: var(--size-1);
    margin-block: var(--gap-4) var(--gap-1);
  }
  .told p {
    margin-block: 0 var(--gap-1);
    max-inline-size: var(--line);
  }
  .why,
  .decline {
    margin-block-start: 0;
  }
  .whole {
    margin-block-start: var(--gap-2);
  }
  .list {
    border-block-start: 1px solid var(--hairline);
  }
  .list ul {
    list-style: none;
    max-inline-size: var(--line);
    padding: 0;
  }
  .list li {
    border-block-start: 1px solid var(--hairline);
    display: grid;
    gap: 0 var(--gap-3);
    grid-template-columns: 1.25rem minmax(0, 1fr);
    padding-block: var(--gap-3);
  }
  .list li > svg {
    block-size: 1.5rem;
    fill: none;
    inline-size: 1rem;
    stroke: currentColor;
    stroke-width: 2.5;
  }
  .list svg .voice {
    stroke: var(--voice);
  }
  .list p {
    margin: 0;
    overflow-wrap: anywhere;
  }
  .open {
    color: var(--voice);
  }
`;
