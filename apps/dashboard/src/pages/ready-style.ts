import { css } from 'lit';
import { fileFieldStyle } from '../parts/field-style.ts';

/** The page before a set: choices as a list, then the cautions, and the start after them: nothing lies over a caution. */
export const readyStyle = css`
  .sheet {
    display: grid;
    gap: var(--gap-6) var(--gap-12);
  }
  .choice {
    align-content: start;
    display: grid;
    gap: var(--gap-6);
  }
  fieldset {
    border: 0;
    margin: 0;
    min-inline-size: 0;
    padding: 0;
  }
  legend,
  h2 {
    font-size: var(--size-2);
    font-weight: 600;
    margin-block-end: var(--gap-2);
    padding: 0;
  }
  .chosen {
    font-size: var(--size-2);
    margin-block-end: var(--gap-1);
  }
  .options {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(17rem, 100%), 1fr));
  }
  .option {
    align-items: center;
    border-block-start: 1px solid var(--hairline);
    cursor: pointer;
    display: flex;
    gap: var(--gap-3);
    min-block-size: var(--target);
    padding-block: var(--gap-1);
  }
  .option:has(:disabled) {
    color: var(--ink-quiet);
    cursor: not-allowed;
  }
  .option small {
    display: block;
    font-size: var(--size-1);
    line-height: 1.25;
  }
  input[type='radio'] {
    accent-color: var(--ink);
    block-size: 24px;
    flex: none;
    inline-size: 24px;
    margin: 0 var(--gap-1);
  }
  .file {
    display: grid;
    gap: var(--gap-1);
    margin-block: var(--gap-3);
  }
  ${fileFieldStyle}
  ul {
    margin-block: 0 var(--gap-3);
    padding-inline-start: 1.2em;
  }
  h1 {
    font-size: clamp(var(--size-3), 7vw, var(--size-4));
  }
  section + section {
    margin-block-start: var(--gap-6);
  }
  .start {
    border-block-start: 1px solid var(--hairline);
    padding-block: var(--gap-3);
  }
  .start p {
    margin-block-end: var(--gap-2);
  }
  @media (min-width: 60rem) {
    .sheet {
      grid-template-columns: var(--thumb-sheet, 3fr 2fr);
    }
    .go {
      order: var(--thumb-order, 0);
    }
    .start {
      border: 0;
    }
  }
`;

/** The field in which the lever of a foot is typed. */
export const leverStyle = css`
  input[type='text'] {
    background: transparent;
    border: 1.5px solid var(--ink);
    border-radius: 4px;
    color: inherit;
    font: inherit;
    font-size: var(--size-2);
    inline-size: 8rem;
    min-block-size: var(--target);
    padding-inline: var(--gap-3);
  }
  .lever {
    display: grid;
    gap: var(--gap-1);
    justify-items: start;
  }
  .lever span:first-child {
    font-size: var(--size-2);
    font-weight: 600;
  }
`;
