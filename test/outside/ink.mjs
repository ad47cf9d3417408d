// The box round what is inked of many pictures: node test/outside/ink.mjs < TASKS > ANSWERS
// TASKS: JSON lines {"svg": path, "renderer": "rsvg" | "chromium", "scale": dots to a CSS pixel, "width", "height": window, CSS pixels}.
// ANSWERS: JSON lines, one a task as each is done, in any order: {"task": its number from 0, "box": [left, top, right, bottom], "size": [width, height]},
// pixels; box is null where nothing is inked; {"task", "problem"} where the picture could not be had.
// One Chromium opens all files of a scale one after the other; pictures are read here, so that no program is started for each.

import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { inflateSync } from 'node:zlib';
import { chromium } from 'playwright-core';

/** Inked is what covers its pixel by more than this share. */
const INK = 0.4;
/** A renderer that takes longer is taken for hung, ms. */
const PATIENCE = 120_000;

/** How often a picture is tried. */
const TRIES = 3;

const run = promisify(execFile);

async function renderRsvg({ svg, scale }) {
  const dots = String(96 * scale);
  // At this resolution a CSS pixel is `scale` dots, so that mm come out at their size; no size is given in pixels.
  return (
    await run('rsvg-convert', ['-d', dots, '-p', dots, svg], {
      encoding: 'buffer',
      maxBuffer: 2 ** 31 - 1,
      timeout: PATIENCE,
    })
  ).stdout;
}

/** At the scale it is started with: set afterwards, sizes would be rounded to whole CSS pixels. */
async function openChromium(scale) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--hide-scrollbars',
      '--no-first-run',
      `--force-device-scale-factor=${scale}`,
    ],
    timeout: PATIENCE,
  });
  const page = await (await browser.newContext({ viewport: null })).newPage();
  page.setDefaultTimeout(PATIENCE);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setDefaultBackgroundColorOverride', { color: { r: 0, g: 0, b: 0, a: 0 } });
  const render = async ({ svg, width, height }) => {
    await devtools.send('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: 0, mobile: false });
    await page.goto(pathToFileURL(resolve(svg)).href);
    const { data } = await devtools.send('Page.captureScreenshot', { format: 'png', optimizeForSpeed: true });
    return Buffer.from(data, 'base64');
  };
  return { render, close: () => browser.close() };
}

/** A PNG with 8 bits a channel, red, green, blue and alpha, not interlaced: its size, and its rows with their filters. ISO/IEC 15948, clauses 9 and 11. */
function unpack(png) {
  if (png.readUInt32BE(0) !== 0x89504e47) throw new Error('no PNG');
  let [width, height] = [0, 0];
  const data = [];
  for (let at = 8; at < png.length;) {
    const [length, name] = [png.readUInt32BE(at), png.toString('latin1', at + 4, at + 8)];
    const chunk = png.subarray(at + 8, at + 8 + length);
    if (name === 'IHDR') {
      [width, height] = [chunk.readUInt32BE(0), chunk.readUInt32BE(4)];
      if (chunk[8] !== 8 || chunk[9] !== 6 || chunk[12] !== 0) throw new Error('not the kind of PNG that is read here');
    }
    if (name === 'IDAT') data.push(chunk);
    at += length + 12;
  }
  return { width, height, rows: inflateSync(Buffer.concat(data)) };
}

/** The alphas of a row, in place of those of the row above it. Filters work channel by channel: only every fourth byte matters. */
function takeAlphas(alphas, rows, start) {
  const filter = rows[start];
  if (filter > 4) throw new Error(`a PNG with a filter ${filter}`);
  let [left, upperLeft] = [0, 0];
  for (let column = 0, at = start + 4; column < alphas.length; column++, at += 4) {
    const up = alphas[column];
    const guess =
      filter === 0
        ? 0
        : filter === 1
          ? left
          : filter === 2
            ? up
            : filter === 3
              ? (left + up) >> 1
              : nearest(left, up, upperLeft);
    left = (rows[at] + guess) & 255;
    alphas[column] = left;
    upperLeft = up;
  }
}

/** The filter called Paeth. */
function nearest(left, up, upperLeft) {
  const guess = left + up - upperLeft;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - upperLeft)];
  return a <= b && a <= c ? left : b <= c ? up : upperLeft;
}

function measure(png) {
  const { width, height, rows } = unpack(png);
  const inked = (alpha) => alpha > INK * 255;
  const alphas = new Uint8Array(width);
  let [left, top, right, bottom] = [width, height, 0, 0];
  for (let row = 0; row < height; row++) {
    takeAlphas(alphas, rows, row * (4 * width + 1));
    const first = alphas.findIndex(inked);
    if (first < 0) continue;
    left = Math.min(left, first);
    right = Math.max(right, alphas.findLastIndex(inked) + 1);
    top = Math.min(top, row);
    bottom = row + 1;
  }
  return { box: right > 0 ? [left, top, right, bottom] : null, size: [width, height] };
}

const tasks = readFileSync(0, 'utf8')
  .split('\n')
  .filter((line) => line !== '')
  .map((line, task) => ({ task, ...JSON.parse(line) }));

async function workOff(some, render) {
  for (const task of some) {
    const answer = await render(task)
      .then(measure)
      .catch((problem) => ({ problem: String(problem.message ?? problem).slice(0, 300) }));
    console.log(JSON.stringify({ task: task.task, ...answer }));
  }
}

/** A browser that fails on one picture in hundreds is started afresh, and said so: only what fails every time is a fault. */
async function workOffInChromium(some) {
  for (const scale of new Set(some.map((task) => task.scale))) {
    let browser = await openChromium(scale);
    const render = async (task) => {
      for (let left = TRIES - 1; ; left--) {
        try {
          return await browser.render(task);
        } catch (problem) {
          if (left === 0) throw problem;
          console.error(
            `Chromium is started afresh for ${task.svg}: ${String(problem.message ?? problem).split('\n')[0]}`,
          );
          await browser.close().catch(() => undefined);
          browser = await openChromium(scale);
        }
      }
    };
    await workOff(
      some.filter((task) => task.scale === scale),
      render,
    ).finally(() => browser.close());
  }
}

const of = (renderer) => tasks.filter((task) => task.renderer === renderer);
await Promise.all([workOff(of('rsvg'), renderRsvg), workOffInChromium(of('chromium'))]);
