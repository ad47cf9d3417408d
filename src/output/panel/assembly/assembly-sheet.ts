import { sayFindings } from '../../../findings/say';
import { html, type HtmlElement } from '../../html';
import { drawFigure } from '../../shop-sheet/figure';
import { measuresIn, type Measures } from '../../shop-sheet/measures';
import { caution, flowing, inchNote, paragraph, section, table, theirs } from '../../shop-sheet/pieces';
import { writePage } from '../../shop-sheet/page';
import { massOf } from '../panel-plan';
import { drawPanel } from '../picture';
import type { BuildableMember, PlannedAssembly } from './plan-assembly';
import { fastenerWords, joinWords } from './words';
import { sentences } from '../../sentences';

const PICTURE = { width: 150, height: 70 };

/** The sheet of an assembly: its panels, and how they are joined. Each panel has an order of work of its own. */
export function writeAssemblySheet(planned: PlannedAssembly & { readonly buildable: true }): string {
  const { job, members, joins, findings } = planned;
  const say = measuresIn(job.units);
  const body = html(
    'body',
    {},
    html(
      'header',
      {},
      html('h1', {}, theirs(job.title)),
      html(
        'p',
        { class: 'lead' },
        'The panels and how they are joined. Make each by the order of work in its own folder first; join them once all are bent and trimmed.',
      ),
      ...inchNote(say),
    ),
    html(
      'main',
      {},
      flowing('panels', 'The panels', panelTable(members, say)),
      ...members
        .filter(({ mirrors }) => mirrors === null)
        .map(({ name, planned: { panel } }) => {
          const caption = `${name}, bent, seen from above its marked face.`;
          const picture = drawPanel(
            panel,
            panel.bends.map(() => true),
            PICTURE,
          );
          return html('figure', {}, drawFigure(picture, caption), html('figcaption', {}, caption));
        }),
      section(
        'joins',
        'Join them',
        html('ol', {}, ...joins.map((join) => html('li', {}, theirs(joinWords(join, say))))),
        paragraph(fastenerWords(joins)),
      ),
      flowing(
        'mind',
        'What you must know',
        caution(
          sentences(
            'Edges and drilled holes cut: deburr them, wear gloves while you handle the sheet, never at a turning drill, and eye protection while you drill and rivet.',
            'Certified work follows its own rules for fasteners.',
          ),
        ),
        html(
          'ul',
          {},
          ...sayFindings(findings, { units: job.units }).map(({ message, hint }) =>
            html('li', {}, hint === '' ? message : `${message}: ${hint}`),
          ),
        ),
      ),
    ),
  );
  return writePage(job.title, 'assembly', body);
}

function panelTable(members: readonly BuildableMember[], say: Measures): HtmlElement {
  const total = members.reduce((sum, { planned }) => sum + massOf(planned), 0);
  return table(
    'Panels',
    ['panel', 'made by', 'bends', 'mass'],
    [
      ...members.map(({ name, mirrors, planned }) => [
        name,
        mirrors === null ? `${name}/order-of-work.html` : `${mirrors}/order-of-work.html, the right of the pair`,
        planned.panel.bends.map((bend) => bend.name).join(', '),
        say.mass(massOf(planned)),
      ]),
      ['together', '', '', say.mass(total)],
    ],
  );
}
