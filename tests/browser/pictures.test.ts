import { afterAll, beforeAll, expect, it } from 'vitest';
import { overflow, PaneTests, picture, violations } from './pane';
import { openPanel, SITE_ROWS, siteBook } from './site';

let tests: PaneTests;
beforeAll(async () => {
  tests = await PaneTests.start();
});
afterAll(() => tests.stop());

const HEAD = SITE_ROWS[0] ?? [];

it('the elevation says in words and in a table what it shows in patterns', async () => {
  const { page } = await openPanel(tests, 'Steps', siteBook());
  const elevation = page.getByRole('img', { name: 'Elevation of Library south, to scale' });
  await elevation.waitFor();
  expect(await elevation.locator('desc').textContent()).toBe(
    'washed, sets the class: S-2. masked: S-4. washed: S-1, S-3.',
  );
  expect(await page.locator('.elevation .key').innerText()).toContain('washed, sets the class: S-2');
  await page.getByText('The picture as a table').click();
  const lines = await page.locator('.elevation tbody tr').allInnerTexts();
  expect(lines.map((line) => line.split('\t'))).toEqual([
    ['1', '1', 'S-1', 'Red clay brick', '100 ft by 12 ft', 'washed'],
    ['2', '1', 'S-2', 'Cast stone', '20 ft by 12 ft', 'washed, sets the class'],
    ['3', '2', 'S-3', 'Red clay brick', '100 ft by 10 ft', 'washed'],
    ['4', '3', 'S-4', 'Limestone', '120 ft by 3 ft', 'masked'],
  ]);
});

it('is drawn to scale', async () => {
  const { page } = await openPanel(tests, 'Steps', siteBook());
  const walls = page.locator('.elevation svg[role=img] g.wall path');
  await walls.first().waitFor();
  const boxes = await walls.evaluateAll((paths) =>
    paths.map((path) => {
      const { width, height } = (path as SVGPathElement).getBBox();
      return [width, height];
    }),
  );
  // 120 ft fill 272 units; S-1 is 100 ft by 12 ft.
  const unit = 272 / 120;
  const [[width = 0, height = 0] = []] = boxes;
  expect(width).toBeCloseTo(100 * unit, 3);
  expect(height).toBeCloseTo(12 * unit, 3);
});

it('a long low wall is whole at 320 px, each strip with its label and its part of the length', async () => {
  const rows = [HEAD, ['L', 'Z', 1, 'Red clay brick', 3000, 10, 0, 0, 0, 'N', 'light', 14, 'no', '']];
  const { page } = await openPanel(tests, 'Steps', siteBook([], rows), { width: 320 });
  const drawn = page.getByRole('img', { name: 'Elevation of Z, to scale, in 2 strips from left to right' });
  expect(await drawn.locator('text.strip').allTextContents()).toEqual(['0 to 150 ft', '150 to 300 ft']);
  expect(await drawn.locator('g.wall text').allTextContents()).toEqual(['1 L', '1 L']);
  const right = await drawn.evaluate((svg) => svg.getBoundingClientRect().right);
  expect(right).toBeLessThanOrEqual(320);
  expect(await overflow(page)).toBe(0);
  expect(await violations(page)).toEqual([]);
  await picture(page, 'site-elevation-long');
});

it('a zone with a tower and a slot is drawn without a hole, its names whole or shortened', async () => {
  const rows = [
    HEAD,
    ...[
      ['Parapet and coping', 1, 200, 2],
      ['Stair tower', 2, 480, 40],
      ['Long wall of the reading room', 2, 700, 14],
      ['Slot', 2, 24, 6],
      ['Base', 3, 300, 3],
    ].map(([name, level, area, height]) => [
      ...[name ?? '', 'Z', level ?? '', 'Red clay brick', area ?? '', height ?? ''],
      ...[0, 0, 0, 'N', 'light', 14, 'no', ''],
    ]),
  ];
  const { page } = await openPanel(tests, 'Steps', siteBook([], rows), { width: 320 });
  const walls = page.locator('.elevation svg[role=img] g.wall');
  await expect.poll(() => walls.count()).toBe(5);
  const texts = await walls.evaluateAll((all) => all.map((wall) => wall.querySelector('text')?.textContent));
  expect(texts).toContain('2 Stair tower');
  // In the list beside it, and on touching it, the name is whole.
  expect(await page.locator('.elevation .key').innerText()).toContain('Long wall of the reading room');
  await page.getByText('The picture as a table').click();
  expect(await overflow(page)).toBe(0);
  // Nothing of the table is cut: it needs no scrolling sideways.
  const table = page.getByRole('region', { name: 'The picture as a table' });
  expect(await table.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBe(0);
  await picture(page, 'site-elevation-tower');
});

it('many walls are drawn without a label that would not fit', async () => {
  const rows = [
    HEAD,
    ...Array.from({ length: 120 }, (_, index) => [
      ...[`Pier ${String(index)}`, 'Z', 1 + (index % 4), 'Red clay brick', 60 + index, 12],
      ...[0, 0, 0, 'N', 'light', 14, index % 7 === 0 ? 'yes' : 'no', ''],
    ]),
  ];
  const { page } = await openPanel(tests, 'Steps', siteBook([], rows), { width: 320 });
  const piers = page.locator('.elevation svg[role=img] g.wall');
  // A pier that goes on in the next strip is drawn in both.
  const drawn = () => piers.evaluateAll((all) => all.map((pier) => pier.querySelector('title')?.textContent));
  await expect.poll(async () => new Set(await drawn()).size).toBe(120);
  const overlaps = await piers.evaluateAll(
    (walls) =>
      walls.filter((wall) => {
        const [path, text] = [wall.querySelector('path'), wall.querySelector('text')];
        if (!path || !text) return false;
        const [room, label] = [path.getBoundingClientRect(), text.getBoundingClientRect()];
        return label.width > room.width + 4 || label.height > room.height + 4;
      }).length,
  );
  expect(overlaps).toBe(0);
  await picture(page, 'site-elevation-many');
});

it('the bars of labor-hours carry their numbers and add up', async () => {
  const { page } = await openPanel(tests, 'Steps', siteBook());
  await page.getByRole('button', { name: 'Labor-hours by part' }).click();
  const together = Number(await page.locator('.hours tfoot .number').first().innerText());
  const numbers = (await page.locator('.hours tbody .number').allInnerTexts()).map(Number);
  expect(numbers.length).toBeGreaterThan(6);
  // Each is rounded to three digits.
  expect(Math.abs(numbers.reduce((sum, hours) => sum + hours, 0) - together)).toBeLessThan(0.5);
  const widths = await page
    .locator('.hours .bar rect')
    .evaluateAll((rects) => rects.map((rect) => parseFloat(rect.getAttribute('width') ?? '')));
  const longest = Math.max(...numbers);
  widths.forEach((width, index) => {
    expect(Math.abs(width - ((numbers[index] ?? 0) / longest) * 100)).toBeLessThan(0.5);
  });
});
