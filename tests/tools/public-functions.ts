import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const TOP = join(import.meta.dirname, '../..');

/** A function a subject of calc shows on its face, as the compiler sees it. */
export interface PublicFunction {
  readonly subject: string;
  readonly name: string;
  readonly signature: ts.Signature;
  /** Its docstring with tags; '' where there is none. */
  readonly doc: string;
}

/** Every function on the faces of calc's subjects, with the checker that knows their types. Takes some seconds. */
export function publicFunctions(): { checker: ts.TypeChecker; functions: readonly PublicFunction[] } {
  const configPath = join(TOP, 'tests/tools/calc.tsconfig.json');
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(configPath, ts.sys.readFile).config,
    ts.sys,
    join(TOP, 'tests/tools'),
  );
  const faces = readdirSync(join(TOP, 'calc'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'node_modules')
    .map(({ name }) => ({ subject: name, path: join(TOP, 'calc', name, 'index.ts') }));
  const program = ts.createProgram(
    faces.map(({ path }) => path),
    options,
  );
  const checker = program.getTypeChecker();
  const functions = faces.flatMap(({ subject, path }) => {
    const file = program.getSourceFile(path);
    const face = file && checker.getSymbolAtLocation(file);
    if (!face) throw new Error(`calc/${subject} has no index.ts that exports anything`);
    return checker.getExportsOfModule(face).flatMap((shown) => {
      const symbol = shown.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(shown) : shown;
      if (!(symbol.flags & ts.SymbolFlags.Value)) return [];
      const [signature] = checker.getTypeOfSymbol(symbol).getCallSignatures();
      if (!signature) return [];
      const tags = symbol
        .getJsDocTags(checker)
        .map((tag) => `@${tag.name} ${ts.displayPartsToString(tag.text)}`);
      const doc = [ts.displayPartsToString(symbol.getDocumentationComment(checker)), ...tags]
        .join('\n')
        .trim();
      return [{ subject, name: shown.name, signature, doc }];
    });
  });
  return { checker, functions };
}
