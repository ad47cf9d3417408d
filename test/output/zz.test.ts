import { it } from 'vitest';
import { readFileSync } from 'node:fs';
import { parseFile } from '../../src/job/parse';
import { loadTables } from '../../src/tables/bundled';
import { loadPanelRules } from '../../src/tables/panel-rules';
import { planPanel } from '../../src/output/panel/plan-panel';
import { sayFindings } from '../../src/findings/say';
it('z', () => {
  const tables = loadTables(), rules = loadPanelRules();
  const parsed = parseFile(readFileSync('templates/panels/hood-side.yaml', 'utf8'), tables);
  console.log(parsed.kind, JSON.stringify(sayFindings(parsed.findings, { units: 'in' })));
  if (parsed.kind !== 'panel' || !parsed.job) return;
  const t = performance.now();
  const planned = planPanel(parsed.job, { tables, rules }, parsed.findings);
  console.log(performance.now() - t, planned.buildable, sayFindings(planned.findings, { units: 'in' }).map((f) => `${f.level} ${f.path}: ${f.message} — ${f.hint}`));
  if (planned.buildable) {
    console.log(planned.order.map((s) => [planned.panel.bends[s.bend]!.name, s.held, s.use.body.name, s.use.stretch.from, s.use.stretch.to, s.off, s.clamped, JSON.stringify(s.overhang), s.nearest, s.bench]));
    console.log(planned.bends.map((b) => [b.bend.name, b.hand, b.smallEnd, b.alone.plan.pull.with, b.alone.plan.bend.wrap.chosen]));
    console.log(planned.forms.map((f) => [f.name, f.runs, f.planned.layout.stations.length]));
  }
});
