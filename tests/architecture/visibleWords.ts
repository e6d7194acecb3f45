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

const visibleAttributes = new Set([
  'alt',
  'aria-braillelabel',
  'aria-description',
  'aria-label',
  'aria-placeholder',
  'aria-roledescription',
  'aria-valuetext',
  'innerText',
  'label',
  'placeholder',
  'summary',
  'textContent',
  'title',
]);

const speakingFolders = /^src\/(?!words\/|storage\/).*\.tsx?$/;
const hasLetter = (text: string) => /\p{L}/u.test(text);
const isSentence = (text: string) => /\p{L}{2,}[,.;!?]?\s+\p{L}{2,}/u.test(text);

/** Does every word that a person sees stand in src/words? */
export function findVisibleWords(files: readonly SourceFile[]): Breach[] {
  return files
    .filter(({ path }) => speakingFolders.test(path))
    .flatMap((file) => {
      const breaches = new Map<number, Breach>();
      const add = (node: Syntax, text: string) =>
        breaches.set(node.start, makeBreach(file, node, `words outside src/words: ${text.trim()}`));

      walk(parseFile(file).program, (node, ancestors) => {
        if (node.type === 'JSXText' && hasLetter(node.value as string)) add(node, node.value as string);
        if (node.type === 'JSXExpressionContainer' && isChild(ancestors[0]))
          refuse(node.expression, hasLetter, add);
        if (node.type === 'JSXAttribute') judgeAttribute(node, ancestors[0], add);
        if (isSaying(node) && !ancestors.some(isSilent)) refuse(node, isSentence, add);
      });
      return [...breaches.values()];
    });
}

type Add = (node: Syntax, text: string) => void;

const isChild = (parent: Syntax | undefined) =>
  parent?.type === 'JSXElement' || parent?.type === 'JSXFragment';
const isSaying = ({ type }: Syntax) => type === 'Literal' || type === 'TemplateLiteral';

/** A thrown error speaks to who maintains this, an import names a file, a plain attribute is for the browser. */
function isSilent({ type }: Syntax): boolean {
  return [
    'ThrowStatement',
    'ImportDeclaration',
    'ImportExpression',
    'JSXAttribute',
    'TSLiteralType',
  ].includes(type);
}

function judgeAttribute(node: Syntax, element: Syntax | undefined, add: Add) {
  const value =
    isSyntax(node.value) && node.value.type === 'JSXExpressionContainer' ? node.value.expression : node.value;
  const { name, namespace } = node.name as Syntax;
  const attribute = isSyntax(name) ? `${readName(namespace)}:${readName(name)}` : (name as string);
  const bare = attribute.replace(/^(attr|prop|bool):/, '');
  if (visibleAttributes.has(bare)) return refuse(value, hasLetter, add);
  const isComponent = /^[A-Z]/.test(readName(element?.name) ?? 'A');
  if (isComponent && !/class$/i.test(bare)) {
    refuse(value, (text) => isSentence(text) || /^\p{Lu}\p{Ll}/u.test(text.trim()), add);
  }
}

/** Follows an expression to the strings it may become. */
function refuse(node: unknown, isRefused: (text: string) => boolean, add: Add): void {
  if (!isSyntax(node)) return;
  const text = isSaying(node) ? readText(node) : '';
  if (isRefused(text)) add(node, text);
  for (const part of readOutcomes(node)) refuse(part, isRefused, add);
}

/** What a literal says, with … where a value is filled in. */
function readText(node: Syntax): string {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : '';
  return (node.quasis as Syntax[]).map(({ value }) => (value as { raw: string }).raw).join('…');
}

/** The parts of an expression of which its value is made. */
function readOutcomes(node: Syntax): unknown[] {
  switch (node.type) {
    case 'TemplateLiteral':
      return node.expressions as unknown[];
    case 'ConditionalExpression':
      return [node.consequent, node.alternate];
    case 'LogicalExpression':
      return [node.left, node.right];
    case 'BinaryExpression':
      return node.operator === '+' ? [node.left, node.right] : [];
    case 'ArrayExpression':
      return node.elements as unknown[];
    case 'ArrowFunctionExpression':
      return [node.body];
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
    case 'TSSatisfiesExpression':
      return [node.expression];
    default:
      return [];
  }
}
