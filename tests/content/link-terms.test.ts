import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkTerms } from '../../site/lib/link-terms.ts';

const TERMS = [
  { href: '/g/#brine', forms: ['Brine'] },
  { href: '/g/#water-bath', forms: ['Water bath', 'bain-marie'] },
  { href: '/g/#caul', forms: ['Caul', 'crépine'] },
  { href: '/g/#forcemeat', forms: ['Forcemeat'] },
  { href: '/g/#straight', forms: ['Straight forcemeat'] },
];
const link = (html: string) => linkTerms(html, TERMS);

describe('linkTerms', () => {
  it('links the first use, keeps the letters, and leaves later uses alone', () => {
    expect(link('<p>Brine, then more brine.</p>')).toBe(
      '<p><a class="term" href="/g/#brine">Brine</a>, then more brine.</p>',
    );
  });

  it('knows a plural, an accent and a hyphen', () => {
    expect(link('<p>Brines, crépine, a bain-marie.</p>')).toBe(
      '<p><a class="term" href="/g/#brine">Brines</a>, <a class="term" href="/g/#caul">crépine</a>, ' +
        'a <a class="term" href="/g/#water-bath">bain-marie</a>.</p>',
    );
  });

  it('takes the longest form, and does not link inside a longer word', () => {
    expect(link('<p>Straight forcemeat in a cauldron, re-brine it.</p>')).toBe(
      '<p><a class="term" href="/g/#straight">Straight forcemeat</a> in a cauldron, re-brine it.</p>',
    );
  });

  it.each([
    '<h2 id="x">Brine</h2>',
    '<a href="/">Brine</a>',
    '<code>brine</code>',
    '<aside class="caution"><p>Brine</p></aside>',
    '<svg><title>Brine</title><text>brine</text></svg>',
    '<astro-island props="{}"><p>Brine</p></astro-island>',
    '<p title="Brine">salt</p>',
    '<!-- Brine -->',
  ])('leaves %s as it is', (html) => {
    expect(link(html)).toBe(html);
  });

  it('goes on after a heading, a void element and an empty one', () => {
    expect(link('<h2>Brine</h2><br><path d="M0"/><p>brine</p>')).toContain('>brine</a>');
  });

  it('gives the same whatever the order of the terms, and twice is once', () => {
    const html = '<p>Straight forcemeat, brine, caul. <b>Forcemeat</b> in a water bath.</p>';
    const once = link(html);
    expect(linkTerms(html, [...TERMS].reverse())).toBe(once);
    expect(linkTerms(once, []).length).toBe(once.length);
  });

  it('never changes what a reader reads', () => {
    const text = (html: string) => html.replace(/<[^>]*>/g, '');
    const words = fc.constantFrom(
      'brine',
      'Brine',
      '<b>',
      '</b>',
      ' and ',
      'forcemeat',
      '<h2>',
      '</h2>',
      '. ',
      'caul',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 30 }), (parts) => {
        const html = parts.join('');
        expect(text(link(html))).toBe(text(html));
      }),
    );
  });
});
