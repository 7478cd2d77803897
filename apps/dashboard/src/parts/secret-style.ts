import { css } from 'lit';

/** Forms in which a clinic is opened and its keys are changed: one column, each field with its help below. */
export const secretStyle = css`
  form {
    display: grid;
    gap: var(--gap-3);
    max-inline-size: 32rem;
  }
  form p {
    margin-block: var(--gap-2) 0;
  }
  .show {
    font-size: var(--size-1);
    justify-self: start;
    padding-inline: 0;
  }
  .show[aria-pressed='true'] {
    background: transparent;
    border-color: var(--ink);
    color: inherit;
    padding-inline: var(--gap-3);
  }
`;
