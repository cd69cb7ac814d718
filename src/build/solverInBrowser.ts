import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseSync, type Plugin } from 'vite';

const isNode = `globalThis.process?.versions?.node&&globalThis.process?.type!="renderer"`;
const nodeModule = 'await import("node:module")';
/** What TypeScript writes for fields that are private, with a check of each use that its compiler has made before. */
const privateFields =
	/var __classPrivateFieldSet=this&&[^]*?state\.set\(receiver,value\),value\};var __classPrivateFieldGet=[^]*?state\.get\(receiver\)\};/;
const plainFields =
	'var __classPrivateFieldSet=(of,field,value)=>field.set(of,value),__classPrivateFieldGet=(of,field)=>field.get(of);';
const otherPrivate = /__classPrivateField(?:Get\((?!this,\w+,"f"\))|Set\((?!this,\w+,\w+,"f"\)))/;

/**
 * Builds the solver of the plans without what it does under Node, which a browser has none of, and without the methods
 * that nobody calls: of some two hundred a dozen are used.
 * @param caller the one file that calls it, from the root of the project
 */
export const solverInBrowser = (root: string, caller = 'src/solver/openHighs.ts'): Plugin => ({
	name: 'evenhang-solver',
	apply: 'build',
	transform: {
		filter: { id: /node_modules[\\/]highs[\\/].+\.mjs$/ },
		async handler(code) {
			if (!code.includes(isNode) || !code.includes(nodeModule))
				this.error('highs asks in another way whether it runs under Node');
			const light = code.replace(privateFields, '');
			if (light === code || otherPrivate.test(light))
				this.error('highs has private methods, or fields in another form');
			const calls = await readFile(join(root, caller), 'utf8');
			return withoutIdleMethods(
				code.replace(privateFields, plainFields).replace(isNode, 'false').replace(nodeModule, '{}'),
				calls,
			);
		},
	},
});

/** A method, by where it stands in its script. */
interface Method {
	readonly name: string;
	readonly start: number;
	readonly end: number;
}

/**
 * A script without the methods whose names stand nowhere else: neither in what calls it, nor outside of methods, nor in a
 * method that stays. A name in a text counts, for one may be called by it.
 */
export function withoutIdleMethods(code: string, calls: string): string {
	const idle = new Set(methodsOf(parseSync('solver.mjs', code).program));
	const named = wordsOf(`${calls}\n${without(code, idle)}`);
	for (const method of again(idle, ({ name }) => named.has(name)))
		for (const word of wordsOf(code.slice(method.start, method.end))) named.add(word);
	return without(code, idle);
}

/** Takes out of a set what passes, one after the other, until nothing does. */
function* again<Item>(items: Set<Item>, passes: (item: Item) => boolean): Generator<Item, void> {
	for (let next = [...items].find(passes); next !== undefined; next = [...items].find(passes)) {
		items.delete(next);
		yield next;
	}
}

const wordsOf = (text: string): Set<string> => new Set(text.match(/[\w$]+/g));

function without(code: string, methods: Iterable<Method>): string {
	let [rest, at] = ['', 0];
	for (const { start, end } of [...methods].sort((a, b) => a.start - b.start)) {
		rest += code.slice(at, start);
		at = end;
	}
	return rest + code.slice(at);
}

/** The plain methods of all classes, but for those within another. */
function methodsOf(node: unknown): readonly Method[] {
	if (typeof node !== 'object' || node === null) return [];
	const { type, kind, computed, key, start, end } = node as Readonly<Record<string, unknown>>;
	const { name } = (key ?? {}) as { readonly name?: string };
	if (type === 'MethodDefinition' && kind === 'method' && computed === false && name !== undefined)
		return [{ name, start: start as number, end: end as number }];
	return Object.values(node).flatMap(methodsOf);
}
