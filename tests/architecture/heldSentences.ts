import {
  type Breach,
  isSyntax,
  makeBreach,
  parseFile,
  readName,
  type SourceFile,
  type Syntax,
  walk,
} from './tree';

/** What a function may hand back that goes on following: elements, and what calls another one for them. */
function follows(body: unknown): boolean {
  if (!isSyntax(body)) return false;
  if (body.type === 'ParenthesizedExpression') return follows(body.expression);
  if (body.type !== 'CallExpression')
    return ['JSXElement', 'JSXFragment', 'BlockStatement'].includes(body.type);
  return isSyntax(body.callee) && body.callee.type === 'CallExpression';
}

/**
 * Solid calls the function within a `<Show>` or `<Match>` once, untracked, for as long as there is something to
 * show. What it returns is followed when it is an element; a bare sentence stays what it was first.
 */
export const findHeldSentences = (files: readonly SourceFile[]): Breach[] =>
  files
    .filter(({ path }) => /^src\/.*\.tsx$/.test(path))
    .flatMap((file) => {
      const breaches: Breach[] = [];
      walk(parseFile(file).program, (node) => {
        if (node.type !== 'JSXElement' || !isHolder(node.openingElement)) return;
        for (const child of node.children as Syntax[]) {
          const made = child.type === 'JSXExpressionContainer' ? child.expression : null;
          if (!isSyntax(made) || made.type !== 'ArrowFunctionExpression') continue;
          if (!follows(made.body))
            breaches.push(makeBreach(file, child, 'a sentence that stays what it was first'));
        }
      });
      return breaches;
    });

function isHolder(opening: unknown): boolean {
  if (!isSyntax(opening) || !['Show', 'Match'].includes(readName(opening.name) ?? '')) return false;
  return !(opening.attributes as Syntax[]).some(({ name }) => readName(name) === 'keyed');
}
