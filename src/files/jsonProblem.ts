const token =
	/[\t\n\r ]*(?:([{}[\],:])|("(?:[^"\\\0-\x1f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null))/y; // eslint-disable-line no-control-regex -- a JSON text has none

type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or ]' | ', or }' | 'the end';

/**
 * Where a text stops being JSON, in words: engines differ in whether they say it.
 * @returns undefined if the text is JSON
 */
export function jsonProblem(text: string): string | undefined {
	const open: ('{' | '[')[] = [];
	let expected: Expected = 'value';
	for (token.lastIndex = 0; ;) {
		const at = token.lastIndex;
		const match = token.exec(text);
		if (match === null) {
			const isEnd = /^[\t\n\r ]*$/.test(text.slice(at));
			if (isEnd) return expected === 'the end' ? undefined : `it breaks off in line ${lineAt(text, text.length)}`;
			return problemAt(text, at, expected);
		}
		const [, sign, string] = match;
		const next = after(sign, string !== undefined, expected, open);
		if (next === undefined) return problemAt(text, at, expected);
		expected = next;
	}
}

/** What may stand after a token; undefined if the token itself may not stand here. */
function after(
	sign: string | undefined,
	isString: boolean,
	expected: Expected,
	open: ('{' | '[')[],
): Expected | undefined {
	const afterValue = (): Expected => {
		const around = open.at(-1);
		return around === undefined ? 'the end' : around === '{' ? ', or }' : ', or ]';
	};
	const isValueExpected = expected === 'value' || expected === 'value or ]';
	if (sign === undefined) {
		if (isValueExpected) return afterValue();
		return isString && (expected === 'key' || expected === 'key or }') ? ':' : undefined;
	}
	if (sign === '{' || sign === '[') {
		if (!isValueExpected) return undefined;
		open.push(sign);
		return sign === '{' ? 'key or }' : 'value or ]';
	}
	if (sign === ':') return expected === ':' ? 'value' : undefined;
	if (sign === ',') return expected === ', or ]' ? 'value' : expected === ', or }' ? 'key' : undefined;
	if (!expected.endsWith(` ${sign}`)) return undefined;
	open.pop();
	return afterValue();
}

function problemAt(text: string, at: number, expected: Expected): string {
	const start = at + /^[\t\n\r ]*/.exec(text.slice(at))![0].length;
	const found = text.slice(start, start + 12).split('\n')[0]!;
	return `it is damaged in line ${lineAt(text, start)}: “${found}” stands where ${words[expected]} should`;
}

const words: Readonly<Record<Expected, string>> = {
	value: 'a value',
	'value or ]': 'a value or ]',
	key: 'a name in quotes',
	'key or }': 'a name in quotes or }',
	':': 'a colon',
	', or ]': 'a comma or ]',
	', or }': 'a comma or }',
	'the end': 'the end of the file',
};

const lineAt = (text: string, at: number): number => text.slice(0, at).split(/\r\n|\r|\n/).length;
