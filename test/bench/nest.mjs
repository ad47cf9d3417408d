// How far along the boards parts reach, laid out by true shapes and by boxes in one run, and how long it takes. Run by `npm run bench`.
import { build } from 'esbuild';

const made = await build({
  entryPoints: ['test/bench/nest.ts'],
  bundle: true,
  write: false,
  format: 'esm',
  platform: 'node',
});
const { rows } = await import(
  `data:text/javascript;base64,${Buffer.from(made.outputFiles[0].contents).toString('base64')}`
);
const share = (a, b) => `${(100 * (1 - a / b)).toFixed(1)} %`;
for (const { name, parts, ms, shapes, boxes, packer } of rows()) {
  console.log(
    `${parts} ${name}: ${shapes.toFixed(0)} mm in ${(ms / 1000).toFixed(1)} s; less than boxes by the same search ${share(shapes, boxes)}, than the bounding-box packer ${share(shapes, packer)}`,
  );
}
