import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  integrations: [preact(), mdx()],
  trailingSlash: 'always',
  build: { inlineStylesheets: 'never' },
});
