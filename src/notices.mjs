// The notices of everything that is bundled into dist/: each package's name, version and licence, with the text its authors give.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** No licence is shorter; a README that only names one is. Characters. */
const SHORTEST = 400;
const RULE = `${'-'.repeat(78)}\n`;

/** Folders of the packages that the inputs of a bundle come from. */
function packageFolders(inputs) {
  const folders = inputs.flatMap((path) => {
    const match = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//u.exec(path.replaceAll('\\', '/'));
    return match ? [match[1]] : [];
  });
  return [...new Set(folders)];
}

/** What a package's authors give to be handed on: its licence files, or what its README says of them; null where there is neither. */
function ownText(folder) {
  const files = readdirSync(folder).filter((file) => /^(?:licen[cs]e|copying|notice|ofl)/iu.test(file));
  const texts = files.sort().map((file) => readFileSync(join(folder, file), 'utf8').trim());
  if (texts.length > 0) return texts.join('\n\n');
  const readme = readdirSync(folder).find((file) => /^readme/iu.test(file));
  return (readme && /^#+\s*licen[cs]e[\s\S]*/imu.exec(readFileSync(join(folder, readme), 'utf8'))?.[0].trim()) || null;
}

function read(folder) {
  const { name, version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  if (typeof license !== 'string') throw new Error(`${name} names no licence`);
  const by = typeof author === 'string' ? author : (author?.name ?? `the authors of ${name}`);
  return { name, version, license, by, text: ownText(folder) };
}

/** Who gives no text of a licence is under the same words as who does. */
function notice({ name, version, license, by, text }, all) {
  const head = `${RULE}${name} ${version} (${license})\n\n`;
  if (text !== null && text.length > SHORTEST) return `${head}${text}\n`;
  const other = all.find((one) => one.license === license && (one.text?.length ?? 0) > SHORTEST);
  if (!other) throw new Error(`no text of the licence of ${name} (${license})`);
  return `${head}Copyright ${by}\n\n${other.text}\n`;
}

/** One text: our own licence first, then those of the packages, by name, and of the stroke letters. */
export function notices(inputs) {
  const packages = packageFolders(inputs)
    .filter((folder) => existsSync(join(folder, 'package.json')))
    .map(read)
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  const letters = JSON.parse(readFileSync('shared/stroke-font.json', 'utf8')).source;
  return [
    `bendbuck\n\n${readFileSync('LICENSE', 'utf8').trim()}\n\nIt holds, bundled, the following.\n\n`,
    ...packages.map((one) => `${notice(one, packages)}\n`),
    `${RULE}Stroke letters\n\n${letters}\n`,
  ].join('');
}
