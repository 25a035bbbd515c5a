import { resolve } from 'node:path';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { CHUNKS } from './site/tools/chunks.mjs';
import { EVERYWHERE, FRAMES } from './site/tools/policy.mjs';
import { baseFrom, outFrom } from './site/tools/target.mjs';
import { WORDS_VARIABLE, wordsFrom } from './site/tools/words.mjs';

/** `client:bench`: a worksheet that loads when it is needed. */
const benchDirective = {
  name: 'bench-directive',
  hooks: {
    /** @param {{ addClientDirective: (directive: { name: string, entrypoint: string }) => void }} setup */
    'astro:config:setup': ({ addClientDirective }) =>
      addClientDirective({ name: 'bench', entrypoint: './site/bench-directive/bench.ts' }),
  },
};

/** Folder of another language's words, or nothing: English. */
const words = process.env[WORDS_VARIABLE];

export default defineConfig({
  base: baseFrom(process.env),
  outDir: outFrom(process.env),
  srcDir: './site',
  publicDir: './site/public',
  integrations: [preact(), mdx(), benchDirective],
  // Directives stay off: with no plugin to handle them, a `:::` block would vanish, text and all.
  markdown: { processor: satteri({ features: { directive: false, headingAttributes: true } }) },
  // The dev server writes scripts and styles of its own into pages, so their policy waits for the build.
  server: {
    headers: { ...EVERYWHERE, 'Content-Security-Policy': `${FRAMES}; base-uri 'none'; object-src 'none'` },
  },
  trailingSlash: 'always',
  build: { inlineStylesheets: 'never' },
  vite: {
    plugins: words ? [wordsFrom(resolve(words))] : [],
    environments: { client: { build: { rolldownOptions: { output: { codeSplitting: CHUNKS } } } } },
  },
});
