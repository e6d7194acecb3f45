import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'vite';

/** A file of the house: its path from the top with slashes, and its text. Tests plant files that lie nowhere. */
export interface SourceFile {
  path: string;
  text: string;
}

/** A node of the syntax tree (ESTree with TypeScript and JSX), read as plain data. */
export interface Syntax {
  type: string;
  start: number;
  end: number;
  [key: string]: unknown;
}

/** What breaks a rule, and where. */
export interface Breach {
  path: string;
  line: number;
  what: string;
}

const root = join(import.meta.dirname, '..', '..');
const folders = ['shared', 'machines', 'src', 'seeds', 'tests', 'scripts', 'public'];

/** Every file of the house, from the disk. */
export function readTree(): SourceFile[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((file) => ({
        path: file.slice(root.length + 1).replaceAll('\\', '/'),
        text: readFileSync(file, 'utf8'),
      })),
  );
}

export const isCode = ({ path }: SourceFile) => /\.(ts|tsx|mjs)$/.test(path);

export function parseFile({ path, text }: SourceFile): { program: Syntax; comments: Syntax[] } {
  const { program, comments, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]?.message}`);
  return { program: program as unknown as Syntax, comments: comments as unknown as Syntax[] };
}

export const isSyntax = (value: unknown): value is Syntax =>
  typeof value === 'object' && value !== null && typeof (value as Syntax).type === 'string';

/** Visits each node with its ancestors, the nearest first. */
export function walk(node: Syntax, visit: (node: Syntax, ancestors: readonly Syntax[]) => void): void {
  const ancestors: Syntax[] = [];
  const enter = (next: Syntax) => {
    visit(next, ancestors);
    ancestors.unshift(next);
    for (const child of Object.values(next)) {
      for (const part of Array.isArray(child) ? child : [child]) if (isSyntax(part)) enter(part);
    }
    ancestors.shift();
  };
  enter(node);
}

export const makeBreach = (file: SourceFile, node: Syntax, what: string): Breach => ({
  path: file.path,
  line: file.text.slice(0, node.start).split('\n').length,
  what,
});

/** The text of a string literal, or of a template without a hole. */
export function readString(node: unknown): string | undefined {
  if (!isSyntax(node)) return undefined;
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  const quasis = node.type === 'TemplateLiteral' ? (node.quasis as { value: { cooked: string } }[]) : [];
  return quasis.length === 1 ? quasis[0]?.value.cooked : undefined;
}

/** The name of an identifier or of a string key. */
export function readName(node: unknown): string | undefined {
  if (!isSyntax(node)) return undefined;
  if (['Identifier', 'JSXIdentifier'].includes(node.type)) return node.name as string;
  return readString(node);
}
