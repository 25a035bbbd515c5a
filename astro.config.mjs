import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  integrations: [preact(), mdx()],
  // Directives stay off: with no plugin to handle them, a `:::` block would vanish, text and all.
  markdown: { processor: satteri({ features: { directive: false, headingAttributes: true } }) },
  trailingSlash: 'always',
  build: { inlineStylesheets: 'never' },
});
