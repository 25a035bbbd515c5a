import { describe, expect, it } from 'vitest';
import { deadImports, importsOf, resolveImport } from './read-imports.mjs';

describe('importsOf', () => {
  it('reads the fence and the scripts of an .astro file, and not its text', () => {
    const text = [
      '---',
      "import Page from '../layouts/Page.astro';",
      'import { a,',
      "  b } from '../lib/urls.ts';",
      "import type { C } from '@larderwright/calc/cure';",
      "import '../styles/base.css';",
      "// import dead from './comment.ts';",
      "const late = await import('./late.ts');",
      "export { x } from './re-exported.ts';",
      '---',
      "<p>Then import salt from 'the sea'.</p>",
      "<script>import '../scripts/early.js';</script>",
    ].join('\n');
    expect(importsOf('site/pages/a.astro', text)).toEqual([
      '../layouts/Page.astro',
      '../lib/urls.ts',
      '@larderwright/calc/cure',
      '../styles/base.css',
      './late.ts',
      './re-exported.ts',
      '../scripts/early.js',
    ]);
  });

  it('reads the import blocks of an .mdx file, and neither prose nor code samples', () => {
    const text = [
      "import Caution from '../../site/Caution.astro';",
      "import { T } from './t.ts';",
      '',
      "We import liver from 'next door'.",
      '',
      '```ts',
      "import { sample } from './sample.ts';",
      '```',
    ].join('\n');
    expect(importsOf('content/techniques/a.mdx', text)).toEqual(['../../site/Caution.astro', './t.ts']);
  });
});

describe('resolveImport', () => {
  it('finds the file meant, and leaves packages and virtual modules alone', () => {
    expect(resolveImport('content/techniques/a.mdx', '../../worksheets/b.tsx')).toBe('worksheets/b.tsx');
    expect(resolveImport('site/lib/a.astro', '../scripts/early.js?raw')).toBe('site/scripts/early.js');
    expect(resolveImport('site/a.astro', '@larderwright/calc/cure')).toBe('calc/cure/index.ts');
    expect(resolveImport('site/a.astro', 'astro:content')).toBeNull();
    expect(resolveImport('site/a.astro', 'preact')).toBeNull();
  });
});

describe('deadImports', () => {
  it('tells an import that leads nowhere', () => {
    const text = "---\nimport '../calc/package.json';\nimport './no-such-file.css';\n---\n";
    expect(deadImports('site/a.astro', text)).toEqual(['./no-such-file.css']);
  });
});
