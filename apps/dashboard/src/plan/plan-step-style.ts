import { css } from 'lit';
import { fieldBox } from '../parts/field-style.ts';

/** How the page of a plan is set. */
export const planStepStyle = css`
  section {
    margin-block: var(--gap-6);
  }
  ul {
    margin: 0 0 var(--gap-4);
    padding-inline-start: 1.2em;
  }
  h2 {
    font-size: var(--size-2);
  }
  .choices button {
    font-size: var(--size-1);
    text-align: start;
  }
  label {
    display: block;
    font-size: var(--size-2);
    font-weight: 600;
    margin-block-end: var(--gap-3);
  }
  textarea {
    ${fieldBox}
    max-inline-size: 44rem;
    padding-block: var(--gap-2);
  }
  .go {
    display: grid;
    gap: var(--gap-3);
    max-inline-size: 44rem;
  }
`;
