import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { MANY_KINDS } from '../support/book.js';
import { scratch } from '../support/scratch.js';

const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ARGS });
});
afterAll(() => browser.close());

/** A catalogue as the built program writes it, opened from the disk; what the page says and asks for is noted. */
async function open(
  how: {
    readonly hash?: string;
    readonly query?: string;
    readonly context?: Parameters<Browser['newContext']>[0];
  } = {},
) {
  const folder = scratch({
    'specs/tides.plica': MANY_KINDS,
    'specs/gaping.plica': 'units in\n\nenvelope gaping {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n',
  });
  const { stderr } = spawnSync(
    process.execPath,
    [join(process.cwd(), 'dist/plica.cjs'), 'catalogue', 'specs', '--out', 'tides.html'],
    {
      cwd: folder,
      encoding: 'utf8',
    },
  );
  expect(stderr).toContain('wrote tides.html: 5 envelopes');
  const context = await browser.newContext(how.context);
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const said: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => requests.push(request.url()));
  const url = `${pathToFileURL(join(folder, 'tides.html')).href}${how.query ?? ''}${how.hash ?? ''}`;
  await page.goto(url);
  return { page, said, requests, url, folder };
}

/** The envelopes that are shown, in the order in which they stand. */
const shown = (page: Page): Promise<readonly string[]> =>
  page.$$eval('details.recipe', (all) =>
    all
      .filter((each) => (each as HTMLElement).checkVisibility())
      .map((each) => each.id.replace('recipe-', '')),
  );

const search = async (page: Page, text: string): Promise<string> => {
  await page.fill('#q', text);
  return (await page.textContent('#answer')) ?? '';
};

test('a card’s size finds the envelopes that take it, the best first, with the room that is left', async () => {
  const { page } = await open();
  expect(await search(page, '5 1/2 x 4 1/4 in')).toBe('Read as a card 5.5 in × 4.25 in: 5 envelopes.');
  const order = await shown(page);
  expect(order[0]).toMatch(/quarter|shell-box/);
  expect(order.at(-1)).toBe('half-letter');
  expect(await page.textContent('#recipe-quarter .fit')).toMatch(
    /^takes it with 0\.\d+ in and 0\.\d+ in to spare$/,
  );
  expect(await search(page, 'half letter')).toBe('Read as a card 8.5 in × 5.5 in: 1 envelope.');
  expect(await shown(page)).toEqual(['half-letter']);
  expect(await search(page, 'quarter letter up to 3/8 in thick')).toContain('0.375 in thick: 1 envelope');
  expect(await shown(page)).toEqual(['shell-box']);
  expect(await search(page, '20 x 30 in')).toContain('0 envelopes. Try a size');
  expect(await search(page, '')).toBe('5 envelopes.');
  expect(await shown(page)).toEqual(['half-letter', 'quarter', 'shell-box', 'lined', 'ferry']);
});

test('words and filters go together, and stand in the address', async () => {
  const { page } = await open();
  await page.selectOption('select[name=tag]', 'tides');
  expect(await shown(page)).toEqual(['half-letter', 'quarter']);
  expect(await search(page, 'table')).toBe('Read as “table”: 1 envelope.');
  expect(await shown(page)).toEqual(['half-letter']);
  expect(new URL(page.url()).search).toBe('?q=table&tag=tides');
  await page.reload();
  expect(await shown(page)).toEqual(['half-letter']);
  await page.selectOption('select[name=tag]', '');
  await page.fill('#q', '');
  await page.selectOption('select[name=depth]', 'box');
  expect(await shown(page)).toEqual(['shell-box']);
  await page.selectOption('select[name=depth]', '');
  await page.selectOption('select[name=paper]', 'Brown kraft');
  expect(await shown(page)).toEqual(['half-letter', 'quarter', 'lined']);
});

test('by the keyboard alone: to the search, clear it, open a recipe, make its drawing larger', async () => {
  const { page } = await open();
  await page.keyboard.press('/');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('q');
  await page.keyboard.type('A6');
  expect(await page.textContent('#answer')).toContain('Read as a card');
  await page.keyboard.press('Escape');
  expect(await page.inputValue('#q')).toBe('');
  await page.focus('#recipe-quarter summary');
  await page.keyboard.press('Enter');
  expect(await page.getAttribute('#recipe-quarter', 'open')).not.toBeNull();
  const image = page.locator('#recipe-quarter figure.blank img');
  const before = (await image.boundingBox())?.width ?? 0;
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Larger');
  await page.keyboard.press('Space');
  expect((await image.boundingBox())?.width).toBeGreaterThan(before * 1.4);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect((await image.boundingBox())?.width).toBeCloseTo(before, 0);
});

test('a link to a recipe opens it', async () => {
  const { page } = await open({ hash: '#recipe-shell-box' });
  expect(await page.getAttribute('#recipe-shell-box', 'open')).not.toBeNull();
  await page.click('a[href="#recipe-lined"]');
  // The page opens it when the address has changed, which is after the click.
  await page.waitForSelector('#recipe-lined[open]', { state: 'attached' });
});

test('what is downloaded is what the page was made of', async () => {
  const { page, folder } = await open({ hash: '#recipe-half-letter' });
  const download = async (name: string) => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.click(`#recipe-half-letter button[data-file="${name}"]`),
    ]);
    const place = join(folder, name);
    await file.saveAs(place);
    return readFileSync(place, 'utf8');
  };
  expect(MANY_KINDS).toContain(await download('half-letter.plica'));
  expect(JSON.parse(await download('half-letter.facts.json'))).toMatchObject({
    name: 'half-letter',
    blank: { width: 285.75 },
  });
  const svg = await download('half-letter.blank.svg');
  expect(svg).toMatch(/^(<\?xml|<svg)/);
  expect(svg).toContain('Half-letter tide table');
});

test('it says nothing on the console and asks for nothing but itself', async () => {
  const { page, said, requests, url } = await open();
  await search(page, 'A6');
  await page.$$eval('details', (all) => {
    for (const each of all) each.open = true;
  });
  await page.waitForLoadState('networkidle');
  expect(said).toEqual([]);
  expect(requests.filter((each) => !each.startsWith('data:'))).toEqual([url]);
});

test.each(['light', 'dark'] as const)(
  'no barrier is found in it, %s, a recipe open (axe-core)',
  async (colorScheme) => {
    const { page } = await open({ hash: '#recipe-shell-box', context: { colorScheme } });
    await page.evaluate(AXE);
    const violations = await page.evaluate(async () => {
      const { axe } = globalThis as unknown as {
        axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    });
    expect(violations).toEqual([]);
  },
);

test.each([320, 1280])('nothing runs over its edge at a width of %i', async (width) => {
  const { page } = await open({ hash: '#recipe-half-letter', context: { viewport: { width, height: 800 } } });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
});

test('without its script everything is there to be read', async () => {
  const { page } = await open({ context: { javaScriptEnabled: false } });
  const text = (await page.innerText('body')).replaceAll('\u00a0', ' ');
  for (const words of [
    'Measurements',
    '11 1/4 in',
    'Take care',
    'Half-letter tide table',
    'Not in this book yet',
  ])
    expect(text).toContain(words);
  expect(await page.isVisible('#search')).toBe(false);
  await page.click('#recipe-half-letter summary');
  expect(await page.innerText('#recipe-half-letter')).toContain('card: 8 1/2 x 5 1/2');
});

test('hostile titles are only titles', async () => {
  const { page } = await open();
  expect(await page.innerText('#recipe-shell-box h3')).toBe('Shell box <b>& "co"</b> =1+1 | *tide*');
  expect(await page.$$('#recipe-shell-box h3 b')).toEqual([]);
});

test('it prints: the table, and what is open, without the controls', async () => {
  const { page, folder } = await open({ hash: '#recipe-shell-box' });
  const place = join(folder, 'print.pdf');
  writeFileSync(place, await page.pdf({ format: 'A4' }));
  const { stdout } = spawnSync('pdftotext', ['-layout', place, '-'], { encoding: 'utf8' });
  expect(stdout).toContain('Measurements');
  expect(stdout).toContain('The fold, stage by stage');
  expect(stdout).not.toContain('Larger');
  expect(stdout).not.toContain('Which card is to go in');
});
