import { readFileSync, writeFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { type ESTree, type Plugin, parseAst } from 'vite';

/**
 * Makes the files of the first load classic scripts. Chromium keeps the compiled code of those that a service worker answered for, whole, from
 * the installing on; a module's it compiles anew at every start (Chromium 156, measured: a module's `consumedCacheSize` stays empty), which
 * held a start on a slow phone up by an eighth. Files that come later stay modules, and import from a small one that holds the same names.
 *
 * A name that a file exports is taken over as it is once the file has run: exported variables may not change (tests/architecture.test.ts).
 */
export function classic(entry: string, names: readonly string[]): Plugin {
  let outDir = '';
  return {
    name: 'classic',
    apply: 'build',
    configResolved: (config) => {
      outDir = config.build.outDir;
    },
    // A file is kept by its name: in another form it has to have another.
    augmentChunkHash: () => FORM,
    writeBundle: {
      order: 'post',
      sequential: true,
      handler(_, bundle) {
        const chunks = new Map(Object.values(bundle).flatMap((each) => (each.type === 'chunk' ? [[each.fileName, each] as const] : [])));
        const named = (name: string) => {
          const found = [...chunks.values()].find((each) => each.name === name);
          if (!found) throw new Error(`The build has no file named ${name}`);
          return found.fileName;
        };
        /** A file after all that it imports. */
        const withImports = (file: string): string[] => [...(chunks.get(file)?.imports.flatMap(withImports) ?? []), file];
        const first = withImports(named(entry));
        const files = [...new Set([...first, ...names.flatMap((name) => withImports(named(name)))])];
        const asked = (file: string) => [...new Set(withImports(file))].filter((each) => !first.includes(each));
        for (const file of files) {
          const path = join(outDir, file);
          const { code, held } = asScript(readFileSync(path, 'utf8'), file, (each) => (files.includes(each) ? asked(each) : undefined));
          writeFileSync(path, file === first[0] ? LOADER + code : code);
          writeFileSync(join(outDir, standIn(file)), asModule(file, held));
        }
        for (const { fileName } of chunks.values()) {
          if (!files.includes(fileName)) rewrite(join(outDir, fileName), (code) => importingFrom(code, files));
        }
        rewrite(join(outDir, 'index.html'), (html) =>
          html.replace(`<script type="module" crossorigin src="./${named(entry)}">`, () => {
            return first.map((file) => `<script defer src="./${file}">`).join('</script>');
          }),
        );
      },
    },
  };
}

/** To be changed whenever the form of the files does. */
const FORM = 'classic 1';

/** What a file is held by once it has run: its name, without the folder that all of them lie in. */
const key = (file: string) => JSON.stringify(file.slice(file.lastIndexOf('/') + 1));
const standIn = (file: string) => file.replace(/-([\w-]{8})\.js$/, '-names-$1.js');

/** Loads files, each once and in their order; gives what the last one exports. One that did not come is asked for again the next time. */
const LOADER = `self.mouldkeepFiles={held:{},asked:{},load(base,names){
return Promise.all(names.map(name=>this.asked[name]??=new Promise((done,failed)=>{
const script=document.createElement("script"),fail=()=>{delete this.asked[name];failed(new TypeError(name+" could not be loaded"))};
script.src=new URL(name,base);script.async=false;script.onerror=fail;
script.onload=()=>name in this.held?done(this.held[name]):fail();
document.head.append(script)}))).then(all=>all.at(-1))}};
`;

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

type Held = readonly (readonly [exported: string, local: string])[];

/** A module's code as a script's; `asked` gives the files to load for one that is imported in code, where that is a script too. */
function asScript(code: string, file: string, asked: (file: string) => readonly string[] | undefined): { code: string; held: Held } {
  const edits: Edit[] = [];
  const held: [string, string][] = [];
  walk(parseAst(code), (node) => {
    const { type, start, end } = node;
    const edit = (text: string) => edits.push({ start, end, text });
    if (type === 'ImportDeclaration') {
      const taken = node.specifiers.map((each) => {
        if (each.type !== 'ImportSpecifier' || each.imported.type !== 'Identifier') throw new Error(`${file} imports a whole module`);
        return `${each.imported.name}:${each.local.name}`;
      });
      edit(`const{${taken.join()}}=self.mouldkeepFiles.held[${key(node.source.value)}];`);
    } else if (type === 'ExportNamedDeclaration') {
      if (node.declaration || node.source) throw new Error(`${file} exports more than names`);
      for (const { exported, local } of node.specifiers) {
        if (exported.type !== 'Identifier' || local.type !== 'Identifier') throw new Error(`${file} exports more than names`);
        held.push([exported.name, local.name]);
      }
      edit('');
    } else if (type === 'ExportDefaultDeclaration' || type === 'ExportAllDeclaration') {
      throw new Error(`${file} exports more than names`);
    } else if (type === 'MetaProperty' && node.meta.name === 'import') edit('mouldkeepFile');
    else if (type === 'ImportExpression') {
      const names = asked(posix.join(file, '..', code.slice(node.source.start + 1, node.source.end - 1)));
      if (names) edit(`self.mouldkeepFiles.load(mouldkeepFile.url,[${names.map(key).join()}])`);
    }
  });
  const body = applied(code, edits);
  const exported = `self.mouldkeepFiles.held[${key(file)}]={${held.map((names) => names.join(':')).join()}}`;
  return { code: `(()=>{"use strict";const mouldkeepFile={url:document.currentScript.src};${body};${exported}})();\n`, held };
}

/** For the modules that come later: the names that a script exports. */
function asModule(file: string, held: Held): string {
  const taken = held.map(([exported], at) => `${exported}:n${at}`);
  const given = held.map(([exported], at) => `n${at} as ${exported}`);
  return `const{${taken.join()}}=self.mouldkeepFiles.held[${key(file)}];export{${given.join()}};\n`;
}

/** A module that imports from scripts, importing from what stands in for them. */
function importingFrom(code: string, files: readonly string[]): string {
  const edits: Edit[] = [];
  walk(parseAst(code), (node) => {
    if (node.type !== 'ImportDeclaration') return;
    const { start, end, value } = node.source;
    const file = files.find((each) => key(each) === key(value));
    if (file) edits.push({ start, end, text: JSON.stringify(`./${standIn(file).slice(file.lastIndexOf('/') + 1)}`) });
  });
  return applied(code, edits);
}

function applied(code: string, edits: readonly Edit[]): string {
  let result = '';
  let at = 0;
  for (const { start, end, text } of [...edits].sort((a, b) => a.start - b.start)) {
    result += code.slice(at, start) + text;
    at = end;
  }
  return result + code.slice(at);
}

type Node = ESTree.Node;

function walk(value: unknown, visit: (node: Node) => void): void {
  if (typeof value !== 'object' || value === null) return;
  if ('type' in value && typeof value.type === 'string') visit(value as Node);
  for (const child of Object.values(value)) walk(child, visit);
}

function rewrite(path: string, change: (text: string) => string): void {
  const before = readFileSync(path, 'utf8');
  const after = change(before);
  if (after !== before) writeFileSync(path, after);
}
