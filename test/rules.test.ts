import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve('src');
const sources = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/u.test(path))
  .map((path) => ({ path: path.replaceAll('\\', '/'), text: readFileSync(join(root, path), 'utf8') }));

/** The rooms of the house in order: each may import itself and what stands before it. */
const rooms = [
  'base',
  'findings',
  'tables',
  'job',
  'design/built',
  'design/bend',
  'design/pull',
  'design/form',
  'design/fixture',
  'design/came-out',
  'design/joints',
  'design/wood',
  'design/block',
  'panel',
  'drawing/parts',
  'drawing/engrave',
  'drawing/tooling',
  'drawing/aids',
  'drawing/panel',
  'drawing/boards',
  'output',
  'cli',
  'page',
];
const rank = (path: string): number =>
  rooms.findIndex((room) => path.startsWith(`${room}/`) || path.startsWith(`${room}.`) || path === room);

function importsOf(text: string): string[] {
  return [...text.matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/gu)].map((match) => match[1] ?? '');
}

describe('the shape of the code', () => {
  it('has files to look at, all in a known room', () => {
    expect(sources.length).toBeGreaterThan(40);
    expect(sources.filter(({ path }) => rank(path) < 0).map(({ path }) => path)).toEqual([]);
  });

  it('imports point one way, from later rooms to earlier', () => {
    const backward = sources.flatMap(({ path, text }) =>
      importsOf(text)
        .filter((target) => target.startsWith('.') && !/\/(?:shared|templates)\//u.test(target))
        .map((target) => relative(root, resolve(root, dirname(path), target)).replaceAll('\\', '/'))
        .filter((target) => rank(target) < 0 || rank(target) > rank(path))
        .map((target) => `${path} imports ${target}`),
    );
    expect(backward).toEqual([]);
  });

  it('no two files import each other in a ring', () => {
    const edges = new Map(
      sources.map(({ path, text }) => [
        path.replace(/(?:\/index)?\.tsx?$/u, ''),
        importsOf(text)
          .filter((target) => target.startsWith('.'))
          .map((target) => relative(root, resolve(root, dirname(path), target)).replaceAll('\\', '/')),
      ]),
    );
    const rings: string[] = [];
    const cleared = new Set<string>();
    const visit = (node: string, trail: readonly string[]): void => {
      if (cleared.has(node)) return;
      if (trail.includes(node)) {
        rings.push([...trail.slice(trail.indexOf(node)), node].join(' → '));
        return;
      }
      for (const next of edges.get(node) ?? []) if (rings.length === 0) visit(next, [...trail, node]);
      cleared.add(node);
    };
    for (const node of edges.keys()) visit(node, []);
    expect(rings).toEqual([]);
  });

  it('only the edges touch files, the network, the DOM, the clock, chance or the console', () => {
    const forbidden =
      /from 'node:|\bconsole\.|\bprocess\.|\bdocument\.|\bwindow\.|\bDate\b|Math\.random|performance\.now|\bfetch\(|setTimeout/u;
    const touching = sources
      .filter(({ path }) => !path.startsWith('cli/') && !path.startsWith('page/'))
      .filter(({ text }) =>
        forbidden.test(
          text
            .replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gmu, '')
            .replaceAll(/\bdocument: Document|document\.(?:errors|warnings|toJS|getIn|contents)/gu, ''),
        ),
      )
      .map(({ path }) => path);
    expect(touching).toEqual([]);
  });

  it('only drawing/parts draws with makerjs', () => {
    const users = sources.filter(({ text }) => importsOf(text).includes('makerjs')).map(({ path }) => dirname(path));
    expect(new Set(users).size).toBeGreaterThan(0);
    expect(users.filter((folder) => folder !== 'drawing/parts')).toEqual([]);
  });
});
