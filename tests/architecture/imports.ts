import { posix } from 'node:path';
import { isSyntax, parseFile, readName, readString, type SourceFile, type Syntax, walk } from './tree';

/** One way in which a file reaches another. */
export interface ImportEdge {
  node: Syntax;
  /** As it is written, or undefined when it is computed. */
  written: string | undefined;
  /** From the top of the house when the address is relative, else the package as written. */
  target: string | undefined;
  isRelative: boolean;
  isTypeOnly: boolean;
  isReExport: boolean;
  /** `import()`: loaded when it is reached, not before. */
  isLate: boolean;
}

/** Every import of a file: static, type, `export from`, dynamic, `import('…').T`, `require`, URL, glob, reference. */
export function readImports(file: SourceFile): ImportEdge[] {
  const { program, comments } = parseFile(file);
  const edges: ImportEdge[] = [];
  const add = (node: Syntax, written: string | undefined, is: Partial<ImportEdge> = {}) => {
    const isRelative = written?.startsWith('.') ?? false;
    const target = isRelative && written ? posix.join(posix.dirname(file.path), written) : written;
    edges.push({
      node,
      written,
      target,
      isRelative,
      isTypeOnly: false,
      isReExport: false,
      isLate: false,
      ...is,
    });
  };

  walk(program, (node) => {
    switch (node.type) {
      case 'ImportDeclaration':
        return add(node, readString(node.source), { isTypeOnly: node.importKind === 'type' });
      case 'ExportAllDeclaration':
      case 'ExportNamedDeclaration':
        if (!isSyntax(node.source)) return;
        return add(node, readString(node.source), {
          isTypeOnly: node.exportKind === 'type',
          isReExport: true,
        });
      case 'ImportExpression':
        return add(node, readString(node.source), { isLate: true });
      case 'TSImportType':
        return add(node, readString(node.source), { isTypeOnly: true });
      case 'TSExternalModuleReference':
        return add(node, readString(node.expression));
      case 'TSModuleDeclaration':
        if (readString(node.id) !== undefined) add(node, readString(node.id), { isTypeOnly: true });
        return;
      case 'CallExpression': {
        const [first] = node.arguments as unknown[];
        if (readName(node.callee) === 'require') return add(node, readString(first));
        if (isImportMeta(node.callee, 'glob')) return add(node, readString(first));
        return;
      }
      case 'NewExpression': {
        const [first, second] = node.arguments as unknown[];
        if (readName(node.callee) === 'URL' && isImportMeta(second, 'url')) add(node, readString(first));
        return;
      }
    }
  });
  for (const comment of comments) {
    const [, kind, written] =
      /^\/\s*<reference\s+(path|types)\s*=\s*["']([^"']+)/.exec(`${comment.value}`) ?? [];
    // A path without a dot is relative too in this oldest of forms.
    if (written) add(comment, kind === 'path' && !written.startsWith('.') ? `./${written}` : written);
  }
  return edges;
}

function isImportMeta(node: unknown, property: string): boolean {
  if (!isSyntax(node) || node.type !== 'MemberExpression' || readName(node.property) !== property)
    return false;
  return isSyntax(node.object) && node.object.type === 'MetaProperty';
}
