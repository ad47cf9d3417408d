import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { BuildablePanel } from '../../../src/output/panel/plan-panel';
import { panelScene } from '../../../src/page/panel/panel-scene';
import { workPanel } from '../../../src/page/panel/panel-work';
import type { LookScene } from '../../../src/page/look/scene';

function planned(name: string): BuildablePanel {
  const text = readFileSync(`templates/panels/${name}.yaml`, 'utf8');
  // As it comes from the worker: a copy without anything but data.
  const { planned: made, findings, fault } = structuredClone(workPanel({ text, drawing: null }));
  if (!made) throw new Error(fault + JSON.stringify(findings));
  return made;
}

function boundsOfSheet({ parts }: LookScene): readonly (readonly [number, number])[] {
  const points = parts.filter(({ group }) => group === 'sheet').flatMap(({ polygons }) => polygons.flat());
  return ([0, 1, 2] as const).map((axis) => {
    const values = points.map((point) => point[axis]);
    return [Math.min(...values), Math.max(...values)] as const;
  });
}

describe('a panel in three dimensions', () => {
  // The job says the tray's outside size, 420 by 260 mm, legs of 60 mm flat metal beyond an inside radius of 30 mm, 1.2 mm thick; the fourth edge is left flat.
  const tray = planned('tray');

  it('finished, the tray has the outside size its job asks for', () => {
    const [x, y, z] = boundsOfSheet(panelScene(tray, { done: 3, share: 0 }));
    expect((x?.[1] ?? 0) - (x?.[0] ?? 0)).toBeCloseTo(420, 1);
    expect(y?.[1]).toBeCloseTo(260, 1);
    expect((z?.[1] ?? 0) - (z?.[0] ?? 0)).toBeCloseTo(1.2 + 30 + 60, 1);
  });

  it('before the first bend it lies flat, as thick as the sheet', () => {
    const [, , z] = boundsOfSheet(panelScene(tray, { done: 0, share: 0 }));
    expect(z?.[0]).toBeCloseTo(-0.6, 6);
    expect(z?.[1]).toBeCloseTo(0.6, 6);
  });

  it('pulled round its form, a leg goes further than let go', () => {
    const bend = tray.panel.bends[tray.order[0]?.bend ?? 0]?.name ?? '';
    // How near the leg comes to the middle of the base, seen from above: it leans in over the base before it springs back.
    const nearest = (share: number): number => {
      const leg = panelScene(tray, { done: 0, share }).parts.find(({ name }) => name === `leg of ${bend}`);
      return Math.min(...(leg?.polygons.flat() ?? []).map(([x, y]) => Math.hypot(x - 210, y - 130)));
    };
    expect(nearest(0.899)).toBeLessThan(nearest(1) - 1);
  });

  it.each(['hood-side', 'tray', 'bracket'])(
    '%s: the next form stands on the sheet with its stations, none of it in the metal',
    (name) => {
      const made = name === 'tray' ? tray : planned(name);
      made.order.forEach((_, done) => {
        const scene = panelScene(made, { done, share: 0 });
        const boards = scene.parts.filter(({ group }) => group === 'boards');
        expect(boards.length).toBeGreaterThan(2);
        const { bend, held } = made.order[done] ?? { bend: 0, held: 'base' };
        const own = made.panel.bends[bend];
        const up = own?.turn === 'up' ? 1 : -1;
        // Where the held side has not been turned itself, the form's wood lies beyond its face that becomes the inside.
        const turned = made.order
          .slice(0, done)
          .some((before) => before.bend === (held === 'base' ? own?.base : own?.leg));
        if (turned) return;
        const heights = boards.flatMap(({ polygons }) => polygons.flat()).map(([, , z]) => up * z);
        expect(Math.min(...heights)).toBeGreaterThan(made.panel.thickness / 2 - 1e-6);
      });
    },
  );

  it('a form keeps its size in place: wood is moved, not bent', () => {
    const scene = panelScene(tray, { done: 0, share: 0 });
    const spine = scene.parts.find(({ kind }) => kind === 'spine');
    const points = spine?.polygons.flat() ?? [];
    const across = (axis: 0 | 1 | 2): number =>
      Math.max(...points.map((point) => point[axis])) - Math.min(...points.map((point) => point[axis]));
    const form = tray.forms.find(({ name }) => name === tray.order[0]?.use.body.name)?.planned;
    expect([across(0), across(1), across(2)].sort((a, b) => b - a)[0]).toBeCloseTo(form?.layout.spine.length ?? 0, 3);
  });

  it.each(['hood-side', 'tray', 'bracket'])(
    '%s: every board is turned outward, so that the view shows its faces',
    (name) => {
      const made = name === 'tray' ? tray : planned(name);
      made.order.forEach((_, done) => {
        const { parts } = panelScene(made, { done, share: 0 });
        const volumes = parts.filter(({ group }) => group === 'boards').map(({ polygons }) => volumeOf(polygons));
        for (const volume of volumes) expect(volume).toBeGreaterThan(100);
      });
    },
  );
});

/** By the divergence theorem: positive where polygons run counter-clockwise seen from outside. */
function volumeOf(polygons: readonly (readonly (readonly [number, number, number])[])[]): number {
  return polygons.reduce((sum, [a, ...rest]) => {
    if (!a) return sum;
    return rest.slice(1).reduce((held, c, index) => {
      const b = rest[index] ?? a;
      const cross = [b[1] * c[2] - b[2] * c[1], b[2] * c[0] - b[0] * c[2], b[0] * c[1] - b[1] * c[0]];
      return held + (a[0] * (cross[0] ?? 0) + a[1] * (cross[1] ?? 0) + a[2] * (cross[2] ?? 0)) / 6;
    }, sum);
  }, 0);
}
