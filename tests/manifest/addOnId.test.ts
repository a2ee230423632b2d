// Contract of the add-on's id: a store takes it, it stands in one place, and only Firefox is told of it.
import { expect, test } from 'vitest';
import { chromiumManifest } from '../../manifest/chromium.ts';
import { sourcesIn } from '../../manifest/filesIn.ts';
import { firefoxAddOnId, firefoxManifest } from '../../manifest/firefox.ts';

test('it is an id as a store takes it, and no place holder', () => {
  // The two forms of extension ids: a GUID in braces, or one like an address.
  expect(firefoxAddOnId).toMatch(/^(\{[\da-f]{8}-[\da-f]{4}-[1-5][\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}\}|[\w.-]+@[\w.-]+)$/);
  expect(firefoxAddOnId).not.toMatch(/\.(invalid|example|test|localhost)$|(.)\2{7}/);
});

test('the manifest of Firefox says it; in that of Chromium stands neither it nor a key of its own', () => {
  expect(firefoxManifest.browser_specific_settings?.gecko?.id).toBe(firefoxAddOnId);
  expect(Object.keys(chromiumManifest)).not.toContain('browser_specific_settings');
  expect(Object.keys(chromiumManifest)).not.toContain('key');
});

test('it is written in one file', async () => {
  const bare = firefoxAddOnId.replace(/[{}]/g, '');
  const found = (await sourcesIn('.')).filter(({ bytes }) => Buffer.from(bytes).includes(bare));
  expect(found.map(({ name }) => name)).toEqual(['manifest/firefox.ts']);
});
