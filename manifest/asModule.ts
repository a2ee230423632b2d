// The polyfill of the extension API comes as a script of the older kind. With another such package in another part, esbuild
// keeps its helper for them in a file that the panel then loads at once, without need; as a module it needs no helper.
import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';

export const polyfillAsModule: Plugin = {
  name: 'polyfill as a module',
  setup({ onLoad }) {
    onLoad({ filter: /webextension-polyfill.dist.browser-polyfill\.js$/ }, async ({ path }) => ({
      contents: `const module = { exports: {} }, exports = module.exports;\n${await readFile(path, 'utf8')}\nexport default module.exports;`,
    }));
  },
};
