import fc from 'fast-check';
import ts from 'typescript';
import { numberNamed, textNamed } from './of-name.ts';

/** Values drawn for a type of ours by its name, instead of from its members. */
export type Named = Readonly<Record<string, fc.Arbitrary<unknown>>>;

const nameOf = (type: ts.Type) => type.aliasSymbol?.name ?? type.symbol?.name ?? '';
const has = (type: ts.Type, flag: ts.TypeFlags) => (type.flags & flag) !== 0;

/**
 * Values of any type a public function takes, drawn from the type itself: a new member or a new choice of a union
 * is drawn from the day it exists. What a number or a text may be, its name says (`tempC`, `massG`, `startedOn`).
 * @throws Error for a type no values can be drawn for; it then needs an entry of its own in `named`
 */
export function valuesOf(checker: ts.TypeChecker, named: Named) {
  const known = new Map<string, fc.Arbitrary<unknown>>();

  function drawn(type: ts.Type, name: string, depth: number): fc.Arbitrary<unknown> {
    const own = named[nameOf(type)];
    if (own) return own;
    if (has(type, ts.TypeFlags.StringLiteral | ts.TypeFlags.NumberLiteral))
      return fc.constant((type as ts.LiteralType).value);
    if (has(type, ts.TypeFlags.BooleanLiteral)) return fc.constant(checker.typeToString(type) === 'true');
    if (has(type, ts.TypeFlags.Null)) return fc.constant(null);
    if (has(type, ts.TypeFlags.Undefined | ts.TypeFlags.Void)) return fc.constant(undefined);
    if (has(type, ts.TypeFlags.Number)) return numberNamed(name);
    if (has(type, ts.TypeFlags.String)) return textNamed(name);
    if (has(type, ts.TypeFlags.Boolean)) return fc.boolean();
    if (has(type, ts.TypeFlags.Unknown)) return fc.anything();
    if (has(type, ts.TypeFlags.TemplateLiteral)) return textNamed(name);
    if (has(type, ts.TypeFlags.TypeParameter)) {
      const bound = checker.getBaseConstraintOfType(type);
      return bound ? drawn(bound, name, depth) : fc.constantFrom('a', 1, null);
    }
    if (type.isUnion()) return fc.oneof(...type.types.map((member) => drawn(member, name, depth)));
    if (type.isIntersection() || has(type, ts.TypeFlags.Object)) return object(type, name, depth);
    throw new Error(`No values are drawn for ${name}: ${checker.typeToString(type)}`);
  }

  function object(type: ts.Type, name: string, depth: number): fc.Arbitrary<unknown> {
    const text = checker.typeToString(type, undefined, ts.TypeFormatFlags.NoTruncation);
    if (depth > 9) throw new Error(`${name}: ${text} goes too deep; give it an entry in named.ts`);
    if (checker.isTupleType(type))
      return fc.tuple(...arguments_(type).map((member, at) => drawn(member, `${name}${at}`, depth + 1)));
    const [item, second] = arguments_(type);
    switch (type.symbol?.name) {
      case 'Array':
      case 'ReadonlyArray':
      case 'Iterable':
        if (!item) throw new Error(`${text} of what?`);
        return fc.array(drawn(item, name, depth + 1), { maxLength: 4 });
      case 'Map':
      case 'ReadonlyMap': {
        if (!item || !second) throw new Error(`${text} of what?`);
        const pair = fc.tuple(drawn(item, 'id', depth + 1), drawn(second, name, depth + 1));
        return fc.array(pair, { maxLength: 3 }).map((pairs) => new Map(pairs));
      }
      case 'Uint8Array':
        return fc.uint8Array({ maxLength: 40 });
      case 'Float64Array':
        return fc
          .array(numberNamed(name), { minLength: 1, maxLength: 6 })
          .map((list) => Float64Array.from(list));
    }
    if (type.getCallSignatures().length > 0)
      throw new Error(`${name}: ${text} is a function; give it one in named.ts`);
    const key = `${name}:${text}`;
    const seen = known.get(key);
    if (seen) return seen;
    const members = checker.getPropertiesOfType(type).map((property) => {
      const optional = (property.flags & ts.SymbolFlags.Optional) !== 0;
      const value = checker.getTypeOfSymbol(property);
      const bare = optional ? checker.getNonNullableType(value) : value;
      const held = optional && checker.typeToString(value).includes('null') ? value : bare;
      return { property: property.name, optional, values: drawn(held, property.name, depth + 1) };
    });
    const index = checker.getIndexInfoOfType(type, ts.IndexKind.String);
    const result =
      index && members.length === 0
        ? fc.dictionary(fc.stringMatching(/^[a-z]{1,5}$/), drawn(index.type, name, depth + 1), {
            maxKeys: 3,
            noNullPrototype: true,
          })
        : fc.record(Object.fromEntries(members.map(({ property, values }) => [property, values])), {
            requiredKeys: members.filter(({ optional }) => !optional).map(({ property }) => property),
            noNullPrototype: true,
          });
    known.set(key, result);
    return result;
  }

  const arguments_ = (type: ts.Type) => checker.getTypeArguments(type as ts.TypeReference);

  /** Lists of arguments for a function; the last ones left out now and then where they may be. */
  return function argumentsOf(signature: ts.Signature, ofParameters: Named = {}): fc.Arbitrary<unknown[]> {
    const parameters = signature.getParameters().map((parameter) => {
      const declared = parameter.valueDeclaration;
      const optional =
        declared !== undefined && ts.isParameter(declared) && checker.isOptionalParameter(declared);
      const own = ofParameters[parameter.name];
      if (own) return { optional, values: own };
      const type = checker.getTypeOfSymbol(parameter);
      const values = drawn(optional ? checker.getNonNullableType(type) : type, parameter.name, 0);
      return { optional, values };
    });
    const least = parameters.findIndex(({ optional }) => optional);
    return fc
      .tuple(
        fc.tuple(...parameters.map(({ values }) => values)),
        fc.integer({ min: least < 0 ? parameters.length : least, max: parameters.length }),
      )
      .map(([values, given]) => values.slice(0, given));
  };
}
