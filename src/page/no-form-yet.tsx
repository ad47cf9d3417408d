import type { JSX } from 'preact';
import { SectionPicture } from './words';

/** In the picture's place while no form could be worked out yet: what the page will show, and what is needed for it. */
export function NoFormYet(): JSX.Element {
  return (
    <section class="does" aria-labelledby="does">
      <h2 id="does" tabIndex={-1}>
        What it does
      </h2>
      <p>
        Here the form will stand, with the sheet on it. Fill in the sheet, the bend’s angle, its length, its inside
        radius and the two legs, as the picture names them; or start from a starter above and change it.
      </p>
      <SectionPicture />
    </section>
  );
}
