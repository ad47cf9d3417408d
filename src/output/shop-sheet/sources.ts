import type { Cut } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { html, type HtmlElement } from '../html';
import { metric } from './measures';
import { list, paragraph, table } from './pieces';
import type { Shop } from './shop';

/** What the numbers rest on. Always in mm, N and MPa, the units the tables are kept in. */
export function sources(shop: Shop): HtmlElement[] {
  return [metalTable(shop), boardTable(shop), ruleTable(shop), assumptions(shop)];
}

function metalTable({ bend, job }: Shop): HtmlElement {
  const { metal } = bend;
  const own = 'this job';
  return table(
    'Sheet',
    ['Number', 'Value', 'From'],
    [
      ['metal', metal.name, metal.source],
      ['yield strength (0.2 %)', `${metal.yield} MPa`, 'as above'],
      ['Young’s modulus, Poisson’s ratio', `${metal.modulus} MPa, ${metal.poisson}`, 'as above'],
      [
        'hardening',
        metal.hardening
          ? `strength ${metal.hardening.strength} MPa, exponent ${metal.hardening.exponent}, initial strain ${metal.hardening.initialStrain} (Swift curve)`
          : 'none known: taken as perfectly plastic',
        'as above',
      ],
      ['factor from trial strips', String(Number(bend.factor.toFixed(4))), bend.factor === 1 ? 'no trial strip' : own],
      [
        'neutral-line factor K',
        String(Number(bend.neutral.toFixed(4))),
        job.neutral === null ? 'DIN 6935 (from memory)' : own,
      ],
      [
        'outside strain on the form',
        `${(100 * bend.strain.from).toFixed(2)} % at A, ${(100 * bend.strain.to).toFixed(2)} % at B`,
        't/(2R + t)',
      ],
    ],
  );
}

function boardTable({ board, screw }: Shop): HtmlElement {
  const boards = [...new Map(Object.values(board).map((row) => [row.id, row])).values()];
  return table(
    'Wood and screws',
    ['What', 'Source'],
    [...boards.map((row) => [`${row.name}, modulus ${row.modulus} MPa`, row.source]), [screw.name, screw.source]],
  );
}

function ruleTable({ job, tables }: Shop): HtmlElement {
  const { rules } = tables;
  return table(
    'Rules of the shop: common practice, unless the job says otherwise',
    ['Rule', 'Value'],
    [
      ['hand force aimed for', newtons(job.effort.handForce)],
      ['safety factor against tipping', String(job.effort.safety)],
      ['force one clamp is trusted with', newtons(job.clamps.rating)],
      ['wood left round a clamp hole', metric(job.clamps.wood)],
      ['wood left over a screw’s tip', metric(job.screws.cover)],
      ['longest clear span between stations', metric(job.stations.maxSpan)],
      ['most sag of the sheet between stations', `${job.stations.maxSag} mm`],
      ['most bow of the spine between its supports', `${rules.maxBow} mm`],
      ['least bite of a screw', `${rules.minBiteDiameters} diameters`],
      ['pilot deeper than the screw reaches by', metric(rules.pilotExtraDepth)],
      ...toolRules(job.cut, tables),
    ],
  );
}

function newtons(force: number): string {
  return `${Number(force.toFixed(1))} N`;
}

/** Those of the machine, where one cuts. */
function toolRules(cut: Cut, { tools }: Tables): string[][] {
  const mm = (length: number): string => `${Number(length.toFixed(3))} mm`;
  const joint = ['wood left between joints, holes, screws and edges', mm(tools.jointWood)];
  if (cut.with === 'router') {
    return [
      ['straight bit', mm(cut.bit)],
      [
        'depth of a groove',
        cut.groove === null ? `${tools.grooveShare.toFixed(2)} of the spine’s thickness` : mm(cut.groove),
      ],
      ['groove wider than the board in it by', mm(cut.fit)],
      joint,
    ];
  }
  if (cut.with === 'laser') {
    return [
      ['kerf', mm(cut.kerf)],
      ['slot wider than the tab in it by', mm(cut.fit)],
      ['thin boards stacked up to', cut.layers === null ? mm(tools.stackTo) : `${cut.layers}, as the job says`],
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
