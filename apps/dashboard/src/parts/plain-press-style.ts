import { css } from 'lit';

/** What is told above one plain press: both begin at the edge of the text, and stand close. */
export const plainPressStyle = css`
  p {
    margin-block-end: 0;
  }
  button {
    padding-inline: 0;
    text-align: start;
  }
`;
