import ts from 'typescript';

/** The name of the house, signs of units and formulas: the same in every language. */
const SIGNS = new Set(
  'Larderwright mg kg mm cm mL °C °F kPa ppm min oz lb pH aw Pa kJ kcal cal µm log kWh ml cP mPa dC dF dK'.split(
    ' ',
  ),
);
/** Attributes a person sees or hears. */
const SEEN = new Set(
  'label hint title aria-label placeholder empty missing about alt legend heading head summary caption text what foot aria-valuetext aria-description'.split(
    ' ',
  ),
);
/** Attributes and properties that hold names for the machine, whatever they look like. */
const FOR_THE_MACHINE =
  /^(class|className|id|href|for|path|of|key|type|role|name|value|kind|unit|units|viewBox|d|points|transform|patternTransform|clip-path|style|fill|stroke|autocomplete|inputMode|inputmode|rel|target|accept|src|preserveAspectRatio|aria-(labelledby|describedby|controls|live|current|haspopup|autocomplete|activedescendant|keyshortcuts)|data-.*|on[A-Z].*)$/;

/** Whether a text holds a word: two letters in a row that are no sign of a unit. */
function hasWord(text: string): boolean {
  return text.split(/[^\p{L}°µ]+/u).some((word) => /\p{L}{2}/u.test(word) && !SIGNS.has(word));
}

/** A sentence, or a word that begins with a capital: what a person reads rather than a machine. */
function isProse(text: string): boolean {
  return (/\p{L}{2}\s|\s\p{L}{2}/u.test(text) || /^\s?\p{Lu}\p{Ll}+[.:]?$/u.test(text)) && hasWord(text);
}

/** A text that stands outside the catalogue. */
export interface LooseWords {
  readonly line: number;
  readonly text: string;
}

const ofTemplate = (node: ts.TemplateExpression) =>
  [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join(' ');

/** Whether the words reach a person through this text, as far as its place in the code tells. */
function isSeen(node: ts.Expression, text: string): boolean {
  let child: ts.Node = node;
  for (let parent = node.parent; parent; child = parent, parent = parent.parent) {
    if (ts.isJsxAttribute(parent)) {
      const name = parent.name.getText();
      return SEEN.has(name) ? hasWord(text) : !FOR_THE_MACHINE.test(name) && isProse(text);
    }
    if (ts.isJsxElement(parent) || ts.isJsxFragment(parent)) return hasWord(text);
    if (ts.isPropertyAssignment(parent)) {
      const name = parent.name.getText();
      return parent.initializer === child && !FOR_THE_MACHINE.test(name) && isProse(text);
    }
    if (ts.isConditionalExpression(parent) && parent.condition === child) return false;
    if (ts.isBinaryExpression(parent) && /^([!=]==|in)$/.test(parent.operatorToken.getText())) return false;
    if (ts.isThrowStatement(parent) || ts.isCaseClause(parent) || ts.isTypeNode(parent)) return false;
    if (ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent)) return false;
    if (ts.isElementAccessExpression(parent)) return false;
    if (ts.isNewExpression(parent) || (ts.isCallExpression(parent) && parent.expression !== child))
      return (
        !/Error|RegExp|Collator|Selector|matches|closest|addEventListener/.test(
          parent.expression.getText(),
        ) && isProse(text)
      );
    if (ts.isFunctionLike(parent) || ts.isStatement(parent)) return isProse(text);
  }
  return false;
}

/**
 * Words a person sees that stand in the code itself instead of the catalogue: text between tags, attributes that are
 * read or heard, and prose in any string. Names for the machine, units and the messages of thrown errors are none.
 */
export function looseWords(path: string, source: string): LooseWords[] {
  const file = ts.createSourceFile(
    path,
    source,
    ts.ScriptTarget.Latest,
    true,
    path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );
  const found: LooseWords[] = [];
  const add = (node: ts.Node, text: string) =>
    found.push({
      line: file.getLineAndCharacterOfPosition(node.getStart()).line + 1,
      text: text.replaceAll(/\s+/g, ' ').trim(),
    });
  const walk = (node: ts.Node): void => {
    if (ts.isJsxText(node)) {
      if (hasWord(node.text)) add(node, node.text);
    } else if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) {
      if (isSeen(node, node.text)) add(node, node.text);
    } else if (ts.isTemplateExpression(node) && isSeen(node, ofTemplate(node))) add(node, ofTemplate(node));
    ts.forEachChild(node, walk);
  };
  walk(file);
  return found;
}
