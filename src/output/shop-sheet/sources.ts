import type { Cut } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { html, type HtmlElement } from '../html';
import type { Measures } from './measures';
import { list, paragraph, table } from './pieces';
import type { Shop } from './shop';

/** What the numbers rest on. */
export function sources(shop: Shop): HtmlElement[] {
  return [metalTable(shop), boardTable(shop), woodTable(shop), ruleTable(shop), assumptions(shop)];
}

function metalTable({ bend, job, say }: Shop): HtmlElement {
  const { metal } = bend;
  const own = 'this job';
  return table(
    'Sheet',
    ['Number', 'Value', 'From'],
    [
      ['metal', metal.name, metal.source],
      ['yield strength (0.2 %)', say.stress(metal.yield), 'as above'],
      ['Young’s modulus, Poisson’s ratio', `${say.stress(metal.modulus)}, ${metal.poisson}`, 'as above'],
      [
        'hardening',
        metal.hardening
          ? `strength ${say.stress(metal.hardening.strength)}, exponent ${metal.hardening.exponent}, initial strain ${metal.hardening.initialStrain} (Swift curve)`
          : 'none known: taken as perfectly plastic',
        'as above',
      ],
      ['factor from trials', String(Number(bend.factor.toFixed(4))), bend.trials === null ? 'no trial' : own],
      [
        'neutral-line factor K',
        String(Number(bend.neutral.toFixed(4))),
        job.neutral === null ? 'DIN 6935 (from memory)' : own,
      ],
      [
        'outside strain on the form',
        `${(100 * bend.strain.A).toFixed(2)} % at A, ${(100 * bend.strain.B).toFixed(2)} % at B`,
        't/(2R + t)',
      ],
    ],
  );
}

/** Where the pull loads screws and wood most, against what they bear. */
function woodTable({ plan: { wood }, tables: { rules }, say }: Shop): HtmlElement {
  const { frontEdge, screws, roundEdge } = wood;
  return table(
    'Loads on screws and wood, where they are greatest in the pull',
    ['What', 'Load', 'Bears'],
    [
      [
        'up-push of the held leg on the spine’s front edge',
        `beds in over ${say.length(frontEdge.beds)}`,
        `${say.stress(frontEdge.strength)}; ${say.length(rules.edgeBeds)} is usual`,
      ],
      [
        `shear on each screw of ${screws.station}`,
        say.force(screws.load),
        `${say.force(screws.bears)} in a board’s edge`,
      ],
      [`sheet on the round edge of ${roundEdge.station}`, say.stress(roundEdge.load), say.stress(roundEdge.bears)],
    ],
  );
}

function boardTable({ board, screw, say }: Shop): HtmlElement {
  const boards = [...new Map(Object.values(board).map((row) => [row.id, row])).values()];
  return table(
    'Wood and screws',
    ['What', 'Source'],
    [
      ...boards.map((row) => [`${row.name}, modulus ${say.stress(row.modulus)}`, row.source]),
      [screw.name, screw.source],
    ],
  );
}

function ruleTable({ job, tables, say }: Shop): HtmlElement {
  const { rules } = tables;
  return table(
    'Rules of the shop: common practice, unless the job says otherwise',
    ['Rule', 'Value'],
    [
      ['hand force aimed for', say.force(job.effort.handForce)],
      ['safety factor against tipping', String(job.effort.safety)],
      ['force one clamp is trusted with', say.force(job.clamps.rating)],
      ['wood left round a clamp hole', say.length(job.clamps.wood)],
      ['wood left over a screw’s tip', say.length(job.screws.cover)],
      ['longest clear span between stations', say.length(job.stations.maxSpan)],
      ['most sag of the sheet between stations', say.exact(job.stations.maxSag)],
      ['most bow of the spine between its supports', say.exact(rules.maxBow)],
      ['least bite of a screw', `${rules.minBiteDiameters} diameters`],
      ['pilot deeper than the screw reaches by', say.length(rules.pilotExtraDepth)],
      ...toolRules(job.cut, tables, say),
    ],
  );
}

/** Those of the machine, where one cuts. */
function toolRules(cut: Cut, { tools }: Tables, { exact }: Measures): string[][] {
  const joint = ['wood left between joints, holes, screws and edges', exact(tools.jointWood)];
  if (cut.with === 'router') {
    return [
      ['straight bit', exact(cut.bit)],
      [
        'depth of a groove',
        cut.groove === null ? `${tools.grooveShare.toFixed(2)} of the spine’s thickness` : exact(cut.groove),
      ],
      ['groove wider than the board in it by', exact(cut.fit)],
      joint,
    ];
  }
  if (cut.with === 'laser') {
    return [
      ['kerf', exact(cut.kerf)],
      ['slot wider than the tab in it by', exact(cut.fit)],
      ['thin boards stacked up to', cut.layers === null ? exact(tools.stackTo) : `${cut.layers}, as the job says`],
      joint,
    ];
  }
  return [];
}

function assumptions({ bend }: Shop): HtmlElement {
  return html(
    'div',
    {},
    html('h3', {}, 'Reckoned as'),
    list(
      'wide sheet (plane strain), flow curve above, elastic unloading; the middle of the sheet keeps its length on release',
      bend.form.halfAngle === 0
        ? 'a straight cylinder'
        : 'a straight cone through the two end radii; one wrap, the mean of what the two ends need',
      'clamps hold the form against tipping about the foot’s rear edge, worst at the start of the pull',
    ),
    paragraph(
      'This sheet is a calculation, not a licence: local codes, the rules of your workplace, and the advice of those licensed to give it come first, above all where people’s safety depends on the part.',
    ),
  );
}
