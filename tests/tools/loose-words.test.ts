// biome-ignore-all lint/suspicious/noTemplateCurlyInString: the planted code holds templates of its own
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesBelow } from '../../site/tools/files.mjs';
import { ROOT } from '../../site/tools/project.mjs';
import { looseWords } from './loose-words.ts';

const inCode = (source: string) => looseWords('planted.tsx', source).map(({ text }) => text);

describe('words outside the catalogue', () => {
  it('are found between tags, in what is read or heard, and in prose', () => {
    expect(inCode('const a = <p>Weigh it</p>;')).toEqual(['Weigh it']);
    expect(inCode('const a = <p>{x} left</p>;')).toEqual(['left']);
    expect(inCode('const a = <p>{on ? "on" : "off"}</p>;')).toEqual(['on', 'off']);
    expect(inCode('const a = <Field label="lot" path="gelee.water" />;')).toEqual(['lot']);
    expect(inCode('const a = <input aria-label={`Day of ${x}`} class="field wide" />;')).toEqual(['Day of']);
    expect(inCode('const a = <Answer worked={<b>Derived</b>} value="Not yet known" />;')).toEqual([
      'Derived',
    ]);
    expect(inCode("const a = { title: 'Soak list', unit: 'mm' };")).toEqual(['Soak list']);
    expect(inCode("const say = () => (x ? 'cannot tell' : `about ${x} times`);")).toEqual([
      'cannot tell',
      'about times',
    ]);
    expect(inCode("row('water', 'On meat and water');")).toEqual(['On meat and water']);
  });

  it('are not found in names for the machine, in units and in messages to a programmer', () => {
    const quiet = [
      'const a = <p class="say field-hint" id="the-mix">{x} g</p>;',
      "const a = useAt('casings.linkBy') === 'length' ? `${x} mm` : `${y} kPa`;",
      "throw new Error('No words for it');",
      "const a = { kind: 'mass', units: ['kg', 'lb'], path: `casings.${of}` };",
      "document.querySelector('a.card b');",
      'const a = <path d={`M${x} ${y} L0 0`} transform="rotate(45)" />;',
    ];
    expect(quiet.flatMap(inCode)).toEqual([]);
  });

  it('stand nowhere in the worksheets', async () => {
    const paths = (await filesBelow('worksheets')).filter(
      (path) => /\.tsx?$/.test(path) && !path.startsWith('worksheets/words/'),
    );
    expect(paths.length).toBeGreaterThan(200);
    const found = paths.flatMap((path) =>
      looseWords(path, readFileSync(join(ROOT, path), 'utf8')).map(
        ({ line, text }) => `${path}:${line} ${text}`,
      ),
    );
    expect(found).toEqual([]);
  });
});
