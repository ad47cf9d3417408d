import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { planJob, type Buildable, type Planned } from '../../../src/output/pipeline';
import { tables, tryStarter } from '../../helpers/starters';

/** A starter with parts of it replaced. */
function plan(changes: object, name = 'tapered-curve'): Planned {
  return tryStarter(name, (text) => stringify({ ...(parse(text) as object), ...changes }));
}

/** The same of a job that can be built. */
function built(changes: object, name?: string): Buildable {
  const planned = plan(changes, name);
  if (!planned.buildable) throw new Error(JSON.stringify(planned.findings));
  return planned;
}

const codes = ({ plan: { findings } }: Planned): string[] => findings.map(({ code, level }) => `${level} ${code}`);

describe('what joints there is no room for', () => {
  it('a groove deeper than half the spine, or too shallow to hold', () => {
    expect(codes(plan({ cut: { with: 'router', groove: 9 } }))).not.toContain('error groove-depth');
    expect(codes(plan({ cut: { with: 'router', groove: 9.1 } }))).toContain('error groove-depth');
    expect(codes(plan({ cut: { with: 'router', groove: 0.9 } }))).toContain('error groove-depth');
  });

  it('a groove narrower than the bit', () => {
    const narrow = { spine: 'mdf-18', stations: 'mdf-12', backing: 'mdf-18' };
    expect(codes(plan({ board: narrow, cut: { with: 'router', bit: 12 } }))).not.toContain(
      'error groove-narrower-than-bit',
    );
    expect(codes(plan({ board: narrow, cut: { with: 'router', bit: 12.7 } }))).toContain(
      'error groove-narrower-than-bit',
    );
  });

  it('grooves or slots of two bends’ ends on one form with hardly any wood between them', () => {
    const sharing = (to: number, changes: object): string[] => {
      const { job } = plan(changes);
      const runs = [
        { name: 'long', from: 0, to: 620 },
        { name: 'short', from: 0, to },
      ];
      return codes(planJob({ ...job, runs }, tables));
    };
    // Stations 18 mm thick at 0, and at to − 18: the wall is to − 18 − 18 − fit/2.
    expect(sharing(41, { cut: { with: 'router' } })).not.toContain('error grooves-too-close');
    expect(sharing(39, { cut: { with: 'router' } })).toContain('error grooves-too-close');
    expect(sharing(39, { board: { stock: 'mdf-6' }, cut: { with: 'laser' } })).toContain('error slots-too-close');
    expect(sharing(39, {})).not.toContain('error grooves-too-close');
  });

  it('says what the bit does not go into, and asks for a measured board', () => {
    expect(codes(plan({ cut: { with: 'router' } }))).toEqual(
      expect.arrayContaining(['note smaller-than-bit', 'note board-not-measured']),
    );
    const fine = codes(plan({ board: { stock: 'mdf-18', thickness: 17.8 }, cut: { with: 'router', bit: 3 } }));
    expect(fine).not.toContain('note smaller-than-bit');
    expect(fine).not.toContain('note board-not-measured');
    expect(codes(plan({}))).not.toContain('note board-not-measured');
  });

  it('doubts a thick board on a laser, and slots tighter than the beam’s round corners', () => {
    expect(codes(plan({ cut: { with: 'laser' } }))).toContain('warning thick-for-laser');
    const thin = { board: { stock: 'mdf-6' } };
    expect(codes(plan({ ...thin, cut: { with: 'laser' } }))).not.toContain('warning thick-for-laser');
    expect(codes(plan({ ...thin, cut: { with: 'laser', kerf: 0.2, fit: 0.06 } }))).not.toContain(
      'warning fit-tighter-than-beam',
    );
    expect(codes(plan({ ...thin, cut: { with: 'laser', kerf: 0.2, fit: 0.05 } }))).toContain(
      'warning fit-tighter-than-beam',
    );
  });

  it('stacks thin boards up to the usual thickness, or as many as asked for', () => {
    const layers = (stock: string, more: object = {}): number =>
      built({ board: { stock }, cut: { with: 'laser', ...more } }).layout.layers.stations;
    expect([
      layers('mdf-6'),
      layers('mdf-5'),
      layers('mdf-3'),
      layers('mdf-18'),
      layers('mdf-6', { layers: 2 }),
    ]).toEqual([3, 5, 7, 1, 2]);
    // An odd number, unless asked otherwise: screws go into the middle of the edge.
    const code = 'note screws-in-glue-line';
    expect(codes(plan({ board: { stock: 'mdf-5' }, cut: { with: 'laser' } }))).not.toContain(code);
    expect(codes(plan({ board: { stock: 'mdf-6' }, cut: { with: 'laser', layers: 2 } }))).toContain(code);
  });

  it('thins dowels to sizes that are sold, and says so', () => {
    const dowels = (dowel: number): number[] => {
      const { joints } = built({ board: { stock: 'mdf-6' }, cut: { with: 'laser', dowel } });
      return joints.with === 'laser'
        ? [...new Set(joints.boards.flatMap((board) => board.dowels.map(({ diameter }) => diameter)))]
        : [];
    };
    expect(dowels(7).every((diameter) => [7, 6, 5, 4, 3].includes(diameter))).toBe(true);
    expect(codes(plan({ board: { stock: 'mdf-6' }, cut: { with: 'laser', dowel: 12 } }))).toContain(
      'note dowels-thinner',
    );
    expect(codes(plan({ board: { stock: 'mdf-6' }, cut: { with: 'laser', dowel: 3 } }))).not.toContain(
      'note dowels-thinner',
    );
  });

  it('doubts a fit that places nothing', () => {
    expect(codes(plan({ cut: { with: 'router', fit: 0.6 } }))).toContain('warning loose-fit');
    expect(codes(plan({ cut: { with: 'router', fit: 0.5 } }))).not.toContain('warning loose-fit');
  });

  it('keeps dowels, tabs and screws apart, by brute force', () => {
    for (const name of ['tapered-curve', 'plain-curve', 'thick-steel']) {
      const { layout, joints } = built({ board: { stock: 'mdf-6' }, cut: { with: 'laser' } }, name);
      if (joints.with !== 'laser') throw new Error('not stacked');
      let looked = 0;
      for (const board of [...layout.stations, ...layout.backings]) {
        const stack = joints.boards.find((one) => one.name === board.name);
        for (const { offset, depth, diameter } of stack?.dowels ?? []) {
          for (const screw of board.screws) {
            const beside = Math.abs(offset - screw.offset) - diameter / 2 - screw.kind.diameter / 2;
            expect(Math.max(beside, depth - diameter / 2 - screw.pilotDepth)).toBeGreaterThanOrEqual(4 - 1e-9);
          }
          const reach =
            'radius' in board
              ? board.radius - Math.hypot(offset, depth)
              : Math.min(board.width / 2 - Math.abs(offset), board.depth - depth);
          expect(reach - diameter / 2).toBeGreaterThanOrEqual(4 - 1e-9);
          looked++;
        }
        for (const tab of stack?.tabs ?? []) {
          for (const screw of board.screws)
            expect(
              Math.abs(tab.offset - screw.offset) - tab.width / 2 - screw.kind.headDiameter / 2,
            ).toBeGreaterThanOrEqual(4 - 1e-9);
          looked++;
        }
      }
      expect(looked).toBeGreaterThan(6);
    }
  });
});
