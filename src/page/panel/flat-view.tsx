import font from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf';
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { boundsOf } from '../../base/bounds';
import { coloursFor } from '../../output/colour';
import { blankDrawings, modelOf, templatesOfPanel } from '../../output/panel/files';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { drawingGroups } from '../../output/svg';
import { seePaperModel } from '../../output/pdf/paper-model';
import { seePages } from '../../output/pdf/pdf';
import { tablesIn } from '../../tables/tables';
import { viewedPage, viewedPages, type ViewedDrawing } from '../drawing/all-drawings';
import { toNode } from '../drawing/to-node';
import { Viewer } from '../drawing/viewer';
import { tables } from '../work';

/** Blank border round a drawing, mm. */
const MARGIN = 5;

/** The panel flat: the blank's drawing as the files have it, each hand and each face that is marked. */
export function FlatView({ planned, stale }: { planned: BuildablePanel; stale: boolean }): JSX.Element {
  const all = useMemo(() => viewedBlanks(planned), [planned]);
  const [id, setId] = useState('');
  const [looked, setLooked] = useState(false);
  const view = all.find((one) => one.id === id) ?? all[0];
  const nodes = useMemo(() => view?.elements.map(toNode), [view]);
  return (
    <section class={stale ? 'cut flat stale' : 'cut flat'} aria-labelledby="flat">
      <h2 id="flat">The sheet, flat</h2>
      <p class="look-tools">
        {all.length > 1 ? (
          <select
            aria-label="Which blank"
            value={view?.id ?? ''}
            onChange={(event) => setId(event.currentTarget.value)}
          >
            {all.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </select>
        ) : null}
        <button type="button" onClick={() => setLooked(true)}>
          Look at it full size
        </button>
      </p>
      {view ? (
        <div class="parts">
          <div class="spine">
            <svg
              viewBox={`0 0 ${view.size.width} ${view.size.height}`}
              role="img"
              aria-label={`Drawing of ${view.name}`}
            >
              {nodes}
            </svg>
          </div>
        </div>
      ) : null}
      {looked && view ? (
        <Viewer
          make={() => all}
          later={() => templatePages(planned)}
          of={all}
          first={view.id}
          close={() => setLooked(false)}
        />
      ) : null}
    </section>
  );
}

async function templatePages(planned: BuildablePanel): Promise<ViewedDrawing[]> {
  const { job } = planned;
  const templates = templatesOfPanel(planned, tablesIn(tables, job.units));
  const pages = templates.length === 0 ? [] : await seePages(templates, job.paper, job, font);
  const model = await seePaperModel(modelOf(planned), font);
  return [
    ...viewedPages(pages),
    viewedPage(model, { id: 'paper-model', group: 'To fold of paper', name: model.names }),
  ];
}

function viewedBlanks(planned: BuildablePanel): ViewedDrawing[] {
  const colours = coloursFor(planned.job.cut.colours).svg;
  return blankDrawings(planned).map(({ path, drawing }): ViewedDrawing => {
    const bounds = boundsOf(drawing);
    return {
      id: path,
      group: 'Blank',
      name: (path.split('/').at(-1) ?? path).replaceAll('-', ' '),
      size: { width: bounds.maxX - bounds.minX + 2 * MARGIN, height: bounds.maxY - bounds.minY + 2 * MARGIN },
      elements: drawingGroups(drawing, bounds, MARGIN, colours),
      letters: 'cut',
    };
  });
}
