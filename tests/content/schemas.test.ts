import { describe, expect, it } from 'vitest';
import {
  cautionSchema,
  defectSchema,
  tableSchema,
  techniqueSchema,
  worksheetSchema,
} from '../../content/schemas.ts';
import { readCollection } from './read-content.ts';

const COLLECTIONS = {
  techniques: techniqueSchema,
  cautions: cautionSchema,
  defects: defectSchema,
  tables: tableSchema,
  worksheets: worksheetSchema,
} as const;

const numbered = (count: number) => Array.from({ length: count }, (_, at) => at + 1);

describe.each(Object.entries(COLLECTIONS))('content/%s', (name, schema) => {
  it.each(readCollection(name))('$place keeps its schema', ({ data }) => {
    expect(schema.safeParse(data).error?.issues ?? []).toEqual([]);
  });

  it('holds entries', () => {
    expect(readCollection(name)).not.toEqual([]);
  });
});

it('the cautions are C01 to C58, each once', () => {
  const codes = readCollection('cautions').map(({ data }) => data.code);
  expect(codes.sort()).toEqual(numbered(58).map((n) => `C${String(n).padStart(2, '0')}`));
});

describe('a caution', () => {
  const [whole] = readCollection('cautions');
  const fields = Object.keys(cautionSchema.shape).filter((key) => key !== 'searchWords');

  it.each(readCollection('cautions'))('$place has every field written, also where it is none', ({ data }) => {
    expect(fields.filter((key) => !(key in data))).toEqual([]);
    expect(data.searchWords).not.toHaveLength(0);
  });

  it.each(fields)('without %s is refused, and told what to write', (key) => {
    const { [key]: _left, ...rest } = whole?.data ?? {};
    const issues = cautionSchema.safeParse(rest).error?.issues ?? [];
    expect(issues.map(({ path }) => path[0])).toEqual([key]);
    expect(issues[0]?.message).toMatch(/^(Write|Name)/);
  });

  it.each(
    readCollection('cautions').filter(({ data }) => /\blaws?\b|\bcountr/i.test(`${data.title} ${data.rule}`)),
  )('$place speaks of the law, so it says that the law is a local one', ({ data }) => {
    expect(data.standing).toContain('LC');
  });
});

it('the defects are 1 to 45, each once', () => {
  const numbers = readCollection('defects').map(({ data }) => Number(data.number));
  expect(numbers.sort((a, b) => a - b)).toEqual(numbered(45));
});

it('no two techniques share a number', () => {
  const numbers = readCollection('techniques').map(({ data }) => data.number);
  expect(new Set(numbers).size).toBe(numbers.length);
});

describe('a schema says what to write', () => {
  it('for a misspelt key', () => {
    const { error } = cautionSchema.safeParse({ doNott: [] });
    expect(error?.issues.map(({ message }) => message).join('\n')).toContain('doNott');
  });

  it('for a caution without a rule', () => {
    const issues = cautionSchema.safeParse({}).error?.issues ?? [];
    expect(issues.find(({ path }) => path[0] === 'rule')?.message).toBe(
      'Write the rule in one or two sentences: this is what shows beside a step.',
    );
  });

  it('for a severity that is none of the four', () => {
    const issues = cautionSchema.safeParse({ severity: 'danger' }).error?.issues ?? [];
    expect(issues.find(({ path }) => path[0] === 'severity')?.message).toBe(
      'Write one of: stop, high, take-care, legal.',
    );
  });
});
