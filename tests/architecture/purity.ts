import {
  type Breach,
  isCode,
  makeBreach,
  parseFile,
  readName,
  type SourceFile,
  type Syntax,
  walk,
} from './tree';

const clocksAndChance = new Set([
  'Date',
  'Temporal',
  'performance',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'requestAnimationFrame',
  'requestIdleCallback',
  'crypto',
  'globalThis',
  'self',
  'window',
  'process',
  'eval',
  'Function',
]);

/** What makes a chart wait, run or live by itself. A stored snapshot with these would not come back as it was. */
const livingParts = new Set(['after', 'invoke', 'delay', 'delays']);
const livingCalls = new Set([
  'createActor',
  'interpret',
  'fromPromise',
  'fromCallback',
  'fromObservable',
  'fromEventObservable',
  'spawnChild',
  'waitFor',
  'toPromise',
]);

const isBelowSrc = ({ path }: SourceFile) => /^(shared|machines)\//.test(path);

/** Does nothing in shared and machines read a clock, draw lots or wait? */
export function findClockAndChance(files: readonly SourceFile[]): Breach[] {
  return visitCode(files.filter(isBelowSrc), (node, [parent]) => {
    if (node.type !== 'Identifier' || isNameOnly(node, parent)) return undefined;
    const name = node.name as string;
    if (clocksAndChance.has(name)) return `${name} is no business of shared and machines`;
    if (name === 'Math' && !isPlainMath(node, parent)) return 'Math.random is chance';
    return undefined;
  });
}

/** Does no chart wait, invoke or run an actor? Charts are tables: `transition` is all that is called. */
export function findLivingCharts(files: readonly SourceFile[]): Breach[] {
  const breaches = visitCode(files.filter(isBelowSrc), (node) => {
    if (node.type !== 'Property') return undefined;
    const name = readName(node.key);
    return name !== undefined && livingParts.has(name) ? `${name}: makes a chart live by itself` : undefined;
  });
  const actors = visitCode(
    files.filter((file) => isBelowSrc(file) || file.path.startsWith('src/')),
    (node) => {
      if (node.type !== 'Identifier' || !livingCalls.has(node.name as string)) return undefined;
      return `${node.name}: no actor runs here`;
    },
  );
  return [...breaches, ...actors];
}

function visitCode(
  files: readonly SourceFile[],
  judge: (node: Syntax, ancestors: readonly Syntax[]) => string | undefined,
): Breach[] {
  return files.filter(isCode).flatMap((file) => {
    const breaches: Breach[] = [];
    walk(parseFile(file).program, (node, ancestors) => {
      const why = judge(node, ancestors);
      if (why !== undefined) breaches.push(makeBreach(file, node, why));
    });
    return breaches;
  });
}

/** `record.Date` and `{ Date: 1 }` name something of their own; `{ Date }` does not. */
function isNameOnly(node: Syntax, parent: Syntax | undefined): boolean {
  if (parent?.type === 'MemberExpression') return parent.property === node && parent.computed === false;
  if (parent?.type === 'TSQualifiedName') return parent.right === node;
  if (parent?.type === 'Property') return parent.key === node && !parent.computed && !parent.shorthand;
  const keyed = ['TSPropertySignature', 'TSMethodSignature', 'PropertyDefinition', 'MethodDefinition'];
  return keyed.includes(parent?.type ?? '') && parent?.key === node && !parent.computed;
}

/** `Math.max` is plain; `Math.random`, `Math['random']`, `const { random } = Math` and `f(Math)` are not. */
function isPlainMath(node: Syntax, parent: Syntax | undefined): boolean {
  if (parent?.type !== 'MemberExpression' || parent.object !== node || parent.computed) return false;
  return readName(parent.property) !== 'random';
}
