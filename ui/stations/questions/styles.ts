import { css } from 'lit';

/** The search under the list, in view however long the list is; the list over the whole stage. */
export const questionsStyles = css`
  .asksearch { position: sticky; bottom: 0; z-index: 3; margin-top: 0; }
  .asksearch .lab { display: block; }
  .asksearch .pick { min-height: 56px; font: inherit; color: inherit; }
  .side takeup-questions { order: 4; }
  .stage takeup-questions { position: absolute; inset: 0; overflow-y: auto; z-index: 2; }
`;
