import {
  type Breach,
  isSyntax,
  makeBreach,
  parseFile,
  readName,
  readString,
  type SourceFile,
  type Syntax,
  walk,
} from './tree';

/**
 * Does no screen carry a fixed style? Solid writes it into the markup, where the page's policy refuses it: the
 * screen would look right in development and wrong when served. A class, or a value from a signal, is fine.
 */
export function findInlineStyles(files: readonly SourceFile[]): Breach[] {
  return files
    .filter(({ path }) => /^src\/.*\.tsx$/.test(path))
    .flatMap((file) => {
      const breaches: Breach[] = [];
      walk(parseFile(file).program, (node) => {
        if (node.type === 'JSXAttribute' && readName(node.name) === 'style' && isFixed(node.value)) {
          breaches.push(makeBreach(file, node, 'a fixed style: the policy refuses it'));
        }
      });
      return breaches;
    });
}

function isFixed(value: unknown): boolean {
  const node = isSyntax(value) && value.type === 'JSXExpressionContainer' ? value.expression : value;
  if (!isSyntax(node)) return false;
  if (readString(node) !== undefined) return true;
  if (node.type !== 'ObjectExpression') return false;
  return (node.properties as Syntax[]).some(
    (property) => isSyntax(property.value) && ['Literal', 'TemplateLiteral'].includes(property.value.type),
  );
}
