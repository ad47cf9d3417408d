import type { JSX } from 'preact';
import section from '../../shared/pictures/section.svg';
import { glossary } from '../tables/words';

/** The words of the page, beside the section that names them: folded away until they are asked for. */
export function Words(): JSX.Element {
  return (
    <section class="glossary" aria-labelledby="words">
      <details>
        <summary>
          <h2 id="words">Words</h2>
        </summary>
        <SectionPicture />
        <dl>
          {glossary.map(({ word, is }) => (
            <div key={word}>
              <dt>{word}</dt>
              <dd>{is.replaceAll('`', '')}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

/** A bend and its form in section, with their names. */
export function SectionPicture(): JSX.Element {
  return (
    <img
      class="on-white"
      src={section}
      alt="A section square to the bend: the sheet under the spine, round the station and up; foot, clamp hole, tangent line, take-off, wrap, lever and pull are named"
    />
  );
}
