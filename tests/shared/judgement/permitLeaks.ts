import {
  type Breach,
  isCode,
  isSyntax,
  makeBreach,
  parseFile,
  type SourceFile,
  type Syntax,
  walk,
} from '../../architecture/tree';

const maker = 'shared/judgement/permit.ts';
const house = /^(shared|machines|src|seeds|scripts)\//;
const permits = ['MixPermit', 'TestPermit', 'TonerPermit'];
const issuers = ['issuePermit', 'issueTestPermit', 'issueTonerPermit'];
const guarded = [...permits, ...issuers, 'mixture'];
const aPermit = /MixPermit|TestPermit|TonerPermit|typeof (mixture|issue\w+)/;
/** Between the name of a permit's type and the parameter or the property whose type it is part of. */
const ofType = [
  'TSTypeAnnotation',
  'TSUnionType',
  'TSTypeReference',
  'TSTypeParameterInstantiation',
  'Identifier',
];

/** What is known of the file that a node stands in. */
interface Place {
  readonly file: SourceFile;
  /** Names given to what was issued here. */
  readonly issued: ReadonlySet<string>;
  readonly hasMixture: boolean;
}

const nameOf = (node: unknown): string | undefined => {
  if (!isSyntax(node)) return undefined;
  if (node.type === 'TSQualifiedName') return nameOf(node.right);
  return node.type === 'Identifier' ? (node.name as string) : undefined;
};
const isFunction = ({ type }: Syntax) => /Function/.test(type) && type !== 'TSFunctionType';
const isClaim = ({ type }: Syntax) => ['TSAsExpression', 'TSTypeAssertion', 'TSTypePredicate'].includes(type);
const namesPermit = ({ file }: Place, node: unknown) =>
  isSyntax(node) && aPermit.test(file.text.slice(node.start, node.end));

/** Does a permit's type stand where a permit is handed on and cannot be made: at a parameter, in an interface? */
function isHandedOn(ancestors: readonly Syntax[]): boolean {
  const end = ancestors.findIndex(({ type }) => !ofType.includes(type));
  const annotation = ancestors.slice(0, end).findLast(({ type }) => type === 'TSTypeAnnotation');
  const holder = ancestors[end];
  if (holder === undefined || annotation === undefined) return false;
  return holder.type === 'TSPropertySignature' || (isFunction(holder) && holder.returnType !== annotation);
}

/** A mixture is made with the value of a permit that this very file had issued, and with nothing else. */
function isOfIssued({ issued }: Place, call: Syntax): boolean {
  const [first] = call.arguments as Syntax[];
  const isValue = first?.type === 'MemberExpression' && nameOf(first.property) === 'value';
  return isValue && issued.has(nameOf(first.object) ?? '');
}

function judgeNode(place: Place, node: Syntax, ancestors: readonly Syntax[]): string | undefined {
  switch (node.type) {
    case 'TSAnyKeyword':
      return 'any';
    case 'TSAsExpression':
    case 'TSTypeAssertion':
      return namesPermit(place, node.typeAnnotation) ? 'cast to a permit' : undefined;
    case 'TSTypePredicate':
      return namesPermit(place, node) ? 'claims a permit' : undefined;
    case 'TSImportType':
      return namesPermit(place, node) ? 'borrows a permit type' : undefined;
    case 'ImportSpecifier': {
      const name = nameOf(node.imported) ?? '';
      return guarded.includes(name) && nameOf(node.local) !== name ? 'hides a name' : undefined;
    }
    case 'ImportNamespaceSpecifier': {
      const from = String((ancestors[0]?.source as Syntax | undefined)?.value);
      return /\/(permit|mixture)$/.test(from) ? 'hides a name' : undefined;
    }
    case 'TSTypeReference':
    case 'TSInterfaceHeritage': {
      const isPermit = permits.includes(nameOf(node.typeName ?? node.expression) ?? '');
      const isHarmless = place.file.path === maker || ancestors.some(isClaim) || isHandedOn(ancestors);
      return isPermit && !isHarmless ? 'names a permit where one could be made' : undefined;
    }
    case 'CallExpression': {
      const isMixing = place.hasMixture && nameOf(node.callee) === 'mixture';
      return isMixing && !isOfIssued(place, node) ? 'mixes with what nobody issued' : undefined;
    }
    default:
      return undefined;
  }
}

function readPlace(file: SourceFile, program: Syntax): Place {
  const issued = new Set<string>();
  let hasMixture = false;
  walk(program, ({ type, id, init, imported }) => {
    if (type === 'ImportSpecifier' && nameOf(imported) === 'mixture') hasMixture = true;
    if (type !== 'VariableDeclarator' || !isSyntax(init) || init.type !== 'CallExpression') return;
    if (issuers.includes(nameOf(init.callee) ?? '')) issued.add(nameOf(id) ?? '');
  });
  return { file, issued, hasMixture };
}

function findIn(file: SourceFile): Breach[] {
  const { program, comments } = parseFile(file);
  const place = readPlace(file, program);
  const leaks = comments
    .filter(({ value }) => /@ts-(ignore|expect-error|nocheck)/.test(String(value)))
    .map((comment) => makeBreach(file, comment, 'silences the compiler'));
  walk(program, (node, ancestors) => {
    const what = judgeNode(place, node, ancestors);
    if (what !== undefined) leaks.push(makeBreach(file, node, what));
  });
  const casts = leaks.filter(({ what }) => what === 'cast to a permit');
  const areMakers = file.path === maker && casts.length <= permits.length;
  return areMakers ? leaks.filter((leak) => !casts.includes(leak)) : leaks;
}

/**
 * Where could a permit come from, but from the three makers in its own module?
 * Casts, `any`, claims (`is`, `asserts`), hidden or borrowed names, silenced errors, and mixtures made with anything
 * that was not issued in the same file. The module itself has one cast for each of the three, and no more.
 */
export const findPermitLeaks = (files: readonly SourceFile[]): Breach[] =>
  files.filter((file) => isCode(file) && house.test(file.path)).flatMap(findIn);
