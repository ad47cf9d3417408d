import { relative } from 'node:path';
import type { Reporter, TestModule } from 'vitest/node';

/** Says at the end how long each group of tests took, by folder, summed over the workers, the longest first. */
export default class GroupsReporter implements Reporter {
  private root = process.cwd();

  onInit(vitest: Parameters<NonNullable<Reporter['onInit']>>[0]): void {
    this.root = vitest.config.root;
  }

  onTestRunEnd(modules: readonly TestModule[]): void {
    const groups = new Map<string, { files: number; seconds: number }>();
    for (const module of modules) {
      const { duration, collectDuration, setupDuration } = module.diagnostic();
      const [, folder = ''] = relative(this.root, module.moduleId).split('/');
      const group = folder.includes('.') ? 'test' : `test/${folder}`;
      const { files, seconds } = groups.get(group) ?? { files: 0, seconds: 0 };
      groups.set(group, {
        files: files + 1,
        seconds: seconds + (duration + collectDuration + setupDuration) / 1000,
      });
    }
    const rows = [...groups].sort(([, a], [, b]) => b.seconds - a.seconds);
    process.stdout.write(`\nTime by group, all workers together\n`);
    for (const [group, { files, seconds }] of rows)
      process.stdout.write(
        `  ${group.padEnd(16)}${seconds.toFixed(1).padStart(7)} s  ${String(files).padStart(3)} files\n`,
      );
  }
}
