import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const pages = ['support.html', 'privacy.html'];

// Whatever loads, leads or posts somewhere, in quotes or not: the build writes pages short.
const POINTERS = /\b(?:href|src|srcset|data|action|poster|ping)\s*=\s*["']?([^"'\s>]*)/gi;

it('the support page names the requirement sets that the manifest asks for', () => {
  const manifest = readFileSync('manifest.xml', 'utf8');
  const sets = [...manifest.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)].map(
    ([, name = '', version = '']) => `${name} ${version}`,
  );
  expect(sets.length).toBeGreaterThan(0);
  const text = readFileSync(join('dist', 'support.html'), 'utf8').replace(/\s+/g, ' ');
  for (const set of sets) expect(text).toContain(set);
});

describe.each(pages)('%s in the build', (page) => {
  const text = readFileSync(join('dist', page), 'utf8');

  it('loads nothing: no script, style, picture or frame, and its policy allows none', () => {
    expect(text).toMatch(/<h1>Washdown: \w+/);
    expect(text).toMatch(/<meta [^>]*content="default-src 'none'"/);
    expect(text).not.toMatch(/<(script|link|style|img|iframe|object|embed|video|audio|form|base)\b/i);
    expect(text).not.toMatch(/url\(|@import|\bstyle=|\bon\w+=/i);
  });

  it('leads to the other page and nowhere else', () => {
    const pointers = [...text.matchAll(POINTERS)].map(([, to]) => to);
    expect(pointers).toEqual(pages.filter((other) => other !== page));
    for (const to of pointers) expect(existsSync(join('dist', to ?? ''))).toBe(true);
  });
});
